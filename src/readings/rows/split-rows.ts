import { headingWords } from "../columns/headings.ts";
import { notice } from "../../notice.ts";
import type { Notice } from "../../notice.ts";
import { pick, pickBytes, pickCounts } from "./pick.ts";
import type { ReadRows } from "./row-reader.ts";
import type { RowIds } from "./row-ids.ts";
import { usualStep } from "../times/steps.ts";
import { spreadStamps } from "../times/spread-stamps.ts";
import type { FoundTimes } from "../times/time-types.ts";

/** The rows of one sensor, or all rows of a file whose columns are its sensors. */
export interface RowGroup {
  /** What the sensor is called; null where the file is not parted. */
  readonly id: string | null;
  readonly rows: ReadRows;
  readonly seconds: Float64Array;
}

export interface SplitRows {
  readonly groups: readonly RowGroup[];
  readonly notices: readonly Notice[];
}

const rowsOf = ({ ofRow, names }: RowIds): Uint32Array[] => {
  const counts = names.map((_, id) => ofRow.reduce((sum, own) => sum + (own === id ? 1 : 0), 0));
  const rows = counts.map((count) => new Uint32Array(count));
  const next = counts.map(() => 0);
  for (let row = 0; row < ofRow.length; row += 1) {
    const id = ofRow[row]!;
    rows[id]![next[id]!] = row;
    next[id]! += 1;
  }
  return rows;
};

/** The times of two sensors run beside each other: together they take less time than one after another. */
const overlap = (seconds: Float64Array, groups: readonly Uint32Array[]): boolean => {
  const spans = groups.map((rows) => {
    let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const row of rows) {
      from = Math.min(from, seconds[row]!);
      to = Math.max(to, seconds[row]!);
    }
    return { from, to };
  });
  const total = spans.reduce((sum, { from, to }) => sum + to - from, 0);
  let [union, end] = [0, Number.NEGATIVE_INFINITY];
  for (const { from, to } of spans.toSorted((a, b) => a.from - b.from)) {
    union += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return union < 0.9 * total;
};

/** Rows beside each other of one time and two sensors. */
const repeat = (seconds: Float64Array, ofRow: Uint8Array): boolean => {
  let repeated = 0;
  for (let row = 1; row < seconds.length; row += 1)
    if (seconds[row] === seconds[row - 1] && ofRow[row] !== ofRow[row - 1]) repeated += 1;
  return repeated >= 0.3 * seconds.length;
};

/** Each sensor reports in steps of its own; what comes and goes with the readings is a state. */
const areRegular = (seconds: Float64Array, groups: readonly Uint32Array[]): boolean =>
  groups.every((rows) => rows.length < 3 || usualStep(pick(seconds, rows)).share >= 0.7);

const rowsAt = (rows: ReadRows, indexes: Uint32Array): ReadRows => ({
  ...rows,
  lines: pickCounts(rows.lines, indexes),
  probes: rows.probes.map(({ values, reasons }) => ({
    values: pick(values, indexes),
    reasons: pickBytes(reasons, indexes),
  })),
});

/** A sensor's name; a bare number or letter is named with its heading. */
const speakingId = (heading: string, name: string): string =>
  /^[\d.]+$|^.$/u.test(name) ? `${heading} ${name}` : name;

const otherQuantity =
  /(?:^| )(?:humid\w*|rh|hum|\w*feucht\w*|humedad|umidita|umidade|vochtigheid|kosteus|batt\w*|akku|volt\w*|press\w*|\w*druck|lux|light|licht|co ?2|voc|rssi|signal|dew ?point|taupunkt)(?: |$)/u;

/** Sets aside the rows of what is no thermometer; rows of a sensor are given back. */
const onlyTemperatures = (groups: readonly RowGroup[]): readonly RowGroup[] =>
  groups.filter(({ id, rows }) => {
    const isOther = otherQuantity.test(headingWords(id ?? ""));
    if (isOther) rows.tally.add("other-quantity", rows.lines[0] ?? 0, rows.lines.length);
    return !isOther;
  });

const part = (rows: ReadRows, found: FoundTimes, ids: RowIds): SplitRows | null => {
  const indexes = rowsOf(ids);
  const isIndex = found.format === "index";
  const { seconds } = found;
  const runBesides = (): boolean =>
    overlap(seconds, indexes) && (repeat(seconds, ids.ofRow) || areRegular(seconds, indexes));
  if (!isIndex && !runBesides()) return null;
  const all = indexes.map((own, at) => ({
    id: speakingId(ids.heading, ids.names[at]!),
    rows: rowsAt(rows, own),
    // Without times each sensor's rows are counted from its first.
    seconds: isIndex ? found.seconds.slice(0, own.length) : pick(found.seconds, own),
  }));
  const groups = onlyTemperatures(all);
  const facts = { column: ids.heading, names: groups.map(({ id }) => id).join(", ") };
  return { groups, notices: [notice(isIndex ? "probes-from-start" : "probes-split", facts)] };
};

/**
 * Parts the rows of a file that has one row for each sensor: by its column of
 * names, where their times run beside each other and repeat or keep steps of
 * their own (a sensor moved or replaced in the middle, or a state that comes
 * and goes, leaves one series), or where there are no times. Then
 * stamps printed too coarsely are spread, for each sensor by itself.
 */
export const splitRows = (rows: ReadRows, found: FoundTimes): SplitRows => {
  const parted = rows.ids === null ? null : part(rows, found, rows.ids);
  const whole: RowGroup = { id: null, rows, seconds: found.seconds };
  const { groups, notices } = parted ?? { groups: [whole], notices: [] };
  const spread = found.format === "index" ? [] : groups.map(({ seconds }) => spreadStamps(seconds));
  return { groups, notices: [...notices, ...(spread.find(({ length }) => length > 0) ?? [])] };
};
