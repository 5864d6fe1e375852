import { notice, type Notice } from "../../notice.ts";
import { done, failed, type Outcome } from "../../problem.ts";
import type { TimeFormat } from "../readings-file.ts";
import { growableFloats } from "../rows/growable.ts";
import { createLineRecord } from "./line-record.ts";
import {
  createOrderVotes,
  decideDateOrder,
  isDateInAnyOrder,
  type FoundOrder,
} from "./date-order.ts";
import { createDateRuns, type DateRuns } from "./date-runs.ts";
import { daysFromCivil, isCivil } from "./civil-days.ts";
import { mendedNotices } from "./mend.ts";
import { fitsKind, type StampKind } from "./stamp-kind.ts";
import { createStampReader } from "./stamp.ts";
import type { FoundTimes, TimeAccumulator, TimeOptions } from "./time-types.ts";
import { runsWithoutYear } from "./without-year.ts";
import { lostHalf } from "./unwrap.ts";

const day = 86400;
/** Dates against the order of the others: up to this share are misprints. */
const misprints = 0.01;

interface Place {
  readonly line: number;
  readonly found: string;
}

/** Adds each run's day to its rows, in place, from the first row's day on; returns that day. */
const addDays = (seconds: Float64Array, runs: DateRuns, found: FoundOrder): number => {
  const zero = runs.dayOf(0, found.reading);
  for (let run = 0; run < runs.length; run++) {
    const shift = (runs.dayOf(run, found.reading) - zero) * day;
    const end = run + 1 < runs.length ? runs.rowOf(run + 1) : seconds.length;
    for (let row = runs.rowOf(run); row < end; row++) seconds[row] = seconds[row]! + shift;
  }
  return zero;
};

const orderNotices = ({ reading, why }: FoundOrder): readonly Notice[] =>
  why === null ? [] : [notice("date-order-decided", { order: reading.replace("-", " "), why })];

/** A time of day as hours and minutes. */
const hourText = (seconds: number): string => {
  const minutes = Math.floor((seconds % day) / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
};

/**
 * Takes stamps that have a date. Dates whose order is open are kept as they
 * stand, one entry for each run of rows of one date, and read at the end.
 */
export const createDatedAccumulator = (
  kind: StampKind,
  format: TimeFormat,
  options: TimeOptions,
): TimeAccumulator => {
  const reader = createStampReader();
  const stamp = reader.stamp;
  const seconds = growableFloats();
  const lines = createLineRecord();
  const runs = createDateRuns();
  const votes = createOrderVotes(options.dateOrder);
  const file = options.file ?? "";
  let anyOpen: Place | null = null;
  let against: Place | null = null;
  let turnedAway = 0;
  let dotted = true;
  let firstOffset = 0;
  let firstCells = "";
  let yearFirst = false;
  const last = { open: false, year: NaN, month: NaN, day: NaN, fits: false, against: false };

  const isLast = (): boolean =>
    stamp.day === last.day &&
    stamp.month === last.month &&
    stamp.year === last.year &&
    (stamp.layout.date === "open") === last.open;

  const addKnown = (): boolean => {
    if (!isCivil(stamp.year, stamp.month, stamp.day)) return false;
    yearFirst ||= !stamp.layout.named && !kind.yearless;
    runs.addKnown(seconds.length, daysFromCivil(stamp.year, stamp.month, stamp.day));
    return true;
  };
  const addOpen = (cells: readonly string[], line: number): boolean => {
    const { month: first, day: second, year, shortYear } = stamp;
    const date = { first, second, year, shortYear };
    if (!votes.take(date)) {
      last.against = isDateInAnyOrder(date);
      if (last.against) against ??= { line, found: cells.join(" ") };
      return false;
    }
    anyOpen ??= { line, found: cells.join(" ") };
    dotted &&= stamp.layout.dotted;
    runs.addOpen(seconds.length, date);
    return true;
  };
  const addDate = (cells: readonly string[], line: number): boolean => {
    if (!isLast()) {
      const open = stamp.layout.date === "open";
      last.against = false;
      const fits = open ? addOpen(cells, line) : addKnown();
      Object.assign(last, { open, year: stamp.year, month: stamp.month, day: stamp.day, fits });
    }
    if (last.against) turnedAway++;
    return last.fits;
  };
  const add = (cells: readonly string[], line: number): boolean => {
    if (!reader.read(cells) || !fitsKind(stamp, kind) || !addDate(cells, line)) return false;
    const offset = kind.zoned ? stamp.offset : 0;
    if (seconds.length === 0) [firstOffset, firstCells] = [offset, cells.join(" ")];
    lines.add(seconds.length, line);
    seconds.push(stamp.seconds - offset);
    return true;
  };

  const contradiction = (): Outcome<never> | null => {
    const tolerated = options.dateOrder === undefined ? misprints * seconds.length : 0;
    if (against === null || turnedAway <= tolerated) return null;
    const order = votes.candidates()[0]!.replace("-", " ");
    return failed("date-order-contradicted", { file, order, ...against });
  };
  const dates = kind.yearless ? runsWithoutYear(runs) : runs;
  const decide = (): FoundOrder | null =>
    anyOpen === null
      ? { order: yearFirst ? "year-first" : null, reading: "year-first", why: null }
      : decideDateOrder(dates, votes.candidates(), dotted);
  const finish = (): Outcome<FoundTimes> => {
    const wrong = contradiction();
    if (wrong !== null) return wrong;
    if (seconds.length === 0) return failed("time-undecidable", { file, line: 1, found: "" });
    const found = decide();
    if (found === null) return failed("date-order-undecidable", { file, ...anyOpen! });
    const values = seconds.view();
    const zero = addDays(values, dates, found);
    const row = kind.half || kind.zoned ? -1 : lostHalf(values);
    if (row >= 0)
      return failed("time-undecidable", {
        file,
        line: lines.lineOf(row),
        found: hourText(values[row]!),
      });
    const startWallClock = (zero * day + values[0]! + firstOffset) * 1000;
    const mended = kind.zoned ? [] : mendedNotices(values, lines);
    const year = kind.yearless ? [notice("year-unknown", { found: firstCells })] : [];
    const notices = [...orderNotices(found), ...year, ...mended];
    return done({ format, seconds: values, startWallClock, dateOrder: found.order, notices });
  };
  return { add, finish };
};
