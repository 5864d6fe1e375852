import { fullYear } from "./civil-days.ts";
import { layoutOf, type Layout } from "./stamp-layout.ts";
import { createScan, scanStamp, shapeOf, type Scan } from "./scan.ts";
import { createTemplate } from "./template.ts";
import { anyYear } from "./without-year.ts";

/** The parts of the stamp read last; one object is filled again and again. */
export interface Stamp {
  layout: Layout;
  /** Full year; as written where an open date has three parts of two digits. */
  year: number;
  /** Month, or first part of an open date. */
  month: number;
  /** Day, or second part of an open date. */
  day: number;
  /** All three parts have two digits, so the year may stand first. */
  shortYear: boolean;
  /** Since midnight, or elapsed; local, the offset not taken off. */
  seconds: number;
  hour: number;
  /** False for a date alone. */
  timed: boolean;
  /** Offset from UTC, seconds; NaN where none is written. */
  offset: number;
}

const at = (scan: Scan, index: number): number => (index < 0 ? 0 : scan.values[index]!);

const readDate = (scan: Scan, layout: Layout, stamp: Stamp): void => {
  stamp.year = 0;
  stamp.month = 0;
  stamp.day = 0;
  stamp.shortYear = false;
  if (layout.date === "none") return;
  if (layout.compactDate >= 0) {
    const whole = at(scan, layout.compactDate);
    stamp.year = Math.floor(whole / 10000);
    stamp.month = Math.floor(whole / 100) % 100;
    stamp.day = whole % 100;
    return;
  }
  const digits = layout.year < 0 ? 4 : scan.digits[layout.year]!;
  stamp.year = layout.year < 0 ? anyYear : fullYear(at(scan, layout.year), digits);
  stamp.month = at(scan, layout.month);
  stamp.day = at(scan, layout.day);
  stamp.shortYear = layout.date === "open" && digits <= 2 && scan.digits[layout.month] === 2;
};

/** Hours 1 to 12 and a half of the day; 22:30 PM, as some write it, is 22:30. */
const hourOfDay = (scan: Scan, layout: Layout, hour: number): number =>
  layout.half < 0 || hour > 12 ? hour : (hour % 12) + at(scan, layout.half);

const readTime = (scan: Scan, layout: Layout, stamp: Stamp): boolean => {
  let hour = at(scan, layout.hour);
  let minute = at(scan, layout.minute);
  let second = at(scan, layout.second);
  if (layout.compactTime >= 0) {
    const whole = at(scan, layout.compactTime) * (scan.digits[layout.compactTime] === 4 ? 100 : 1);
    hour = Math.floor(whole / 10000);
    minute = Math.floor(whole / 100) % 100;
    second = whole % 100;
  }
  const counted = layout.hour < 0 && layout.compactTime < 0;
  if ((minute > 59 && !counted) || second > 59) return false;
  if (layout.fraction >= 0)
    second += at(scan, layout.fraction) / 10 ** scan.digits[layout.fraction]!;
  stamp.hour = hourOfDay(scan, layout, hour);
  stamp.timed = layout.hour >= 0 || layout.minute >= 0 || layout.compactTime >= 0;
  stamp.seconds = at(scan, layout.days) * 86400 + (stamp.hour * 3600 + minute * 60) + second;
  return layout.date === "none" || stamp.seconds <= 86400;
};

const readOffset = (scan: Scan, layout: Layout): number => {
  if (layout.offsetSign < 0) return layout.zulu < 0 ? NaN : 0;
  const whole = at(scan, layout.compactOffset);
  const hour = at(scan, layout.offsetHour) + Math.floor(whole / 100);
  const minute = at(scan, layout.offsetMinute) + (whole % 100);
  return (hour * 3600 + minute * 60) * (scan.kinds[layout.offsetSign] === 45 ? -1 : 1);
};

const noLayout = { date: "none" } as Layout;
/** More shapes than this in one file are noise: they are worked out anew each time. */
const shapesKept = 200;

/** A reader of stamps: fills its `stamp` from cells, and remembers the shapes it has met. */
export const createStampReader = (): {
  readonly stamp: Stamp;
  read(cells: readonly string[]): boolean;
} => {
  const scan = createScan();
  const known = new Map<string, Layout | null>();
  // Length of the shape that stamp.layout is for, if the scan before had it; else -1.
  let lastLength = -1;
  let lastWidth = -1;
  const template = createTemplate();
  const stamp: Stamp = {
    layout: noLayout,
    year: 0,
    month: 0,
    day: 0,
    shortYear: false,
    seconds: 0,
    hour: 0,
    timed: false,
    offset: NaN,
  };
  const findLayout = (): Layout | null => {
    const shape = shapeOf(scan);
    const layout = known.get(shape);
    if (layout !== undefined) return layout;
    const found = layoutOf(shape);
    if (known.size < shapesKept) known.set(shape, found);
    return found;
  };
  const settle = (): boolean => {
    if (scan.sameKinds && scan.length === lastLength) return true;
    const layout = findLayout();
    if (layout === null) return false;
    stamp.layout = layout;
    lastLength = scan.length;
    return true;
  };
  const scanned = (cells: readonly string[]): boolean => {
    if (template.fill(scan, cells)) return true;
    template.clear();
    const width = cells[0]?.length ?? 0;
    const scans = scanStamp(scan, cells) && settle();
    // Widths that change from row to row would be learnt in vain.
    if (scans && width === lastWidth) template.learn(scan, cells);
    lastWidth = width;
    if (!scans) lastLength = -1;
    return scans;
  };
  const read = (cells: readonly string[]): boolean => {
    if (!scanned(cells)) return false;
    const layout = stamp.layout;
    readDate(scan, layout, stamp);
    stamp.offset = readOffset(scan, layout);
    return readTime(scan, layout, stamp);
  };
  return { stamp, read };
};
