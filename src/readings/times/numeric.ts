import { done, failed, type Outcome } from "../../problem.ts";
import type { TimeFormat } from "../readings-file.ts";
import { growableFloats } from "../rows/growable.ts";
import { createLineRecord } from "./line-record.ts";
import { mendedNotices } from "./mend.ts";
import type { FoundTimes, TimeAccumulator, TimeOptions } from "./time-types.ts";

/** How a column of plain numbers counts time. */
export interface NumberFormat {
  readonly format: TimeFormat;
  /** Seconds to one, and ones to a second: one of the two is 1. */
  readonly secondsEach: number;
  readonly perSecond: number;
  readonly origin: "epoch" | "elapsed" | "serial" | "undecidable";
  /** Seconds to one in the last place that the cells show; only serial dates need it. */
  readonly resolution: number;
}

/** 1970-01-01 in the 1900 date system of spreadsheets (ECMA-376 part 1, 18.17.4.1; from memory). */
const serialOf1970 = 25569;

const plain = /^\s*[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?\s*$/;
const withUnit = /^\s*([+-]?\d+(?:[.,]\d+)?)\s*([a-z]+)\.?\s*$/i;

/** A cell as a number, decimal comma or point, a unit behind it passed over; NaN. */
export const timeNumber = (cell: string): number => {
  if (plain.test(cell)) return Number(cell.includes(",") ? cell.replace(",", ".") : cell);
  const match = withUnit.exec(cell);
  return match === null ? NaN : Number(match[1]!.replace(",", "."));
};

/** The unit behind the number in a cell ("12.5 min"), or "". */
export const unitBehind = (cell: string): string => withUnit.exec(cell)?.[2] ?? "";

/**
 * A serial date shows parts of a day, which are no whole seconds: rounds to
 * those where every value lies within half its last place of one, else to
 * milliseconds. In place.
 */
const roundSerial = (seconds: Float64Array, resolution: number): void => {
  const nearest = resolution / 2 + 1e-4;
  const whole = seconds.every((value) => Math.abs(value - Math.round(value)) <= nearest);
  const parts = whole ? 1 : 1000;
  for (let row = 0; row < seconds.length; row++)
    seconds[row] = Math.round(seconds[row]! * parts) / parts;
};

const toSeconds = (values: Float64Array, how: NumberFormat): void => {
  const first = values[0]!;
  const zero = how.origin === "epoch" ? first : how.origin === "serial" ? Math.floor(first) : 0;
  for (let row = 0; row < values.length; row++)
    values[row] = ((values[row]! - zero) * how.secondsEach) / how.perSecond;
  if (how.origin === "serial") roundSerial(values, how.resolution);
};

/** Takes times that are plain numbers: since 1970, elapsed, or a spreadsheet's days. */
export const createNumericAccumulator = (
  how: NumberFormat,
  options: TimeOptions,
): TimeAccumulator => {
  const column = growableFloats();
  const lines = createLineRecord();
  let found = "";
  const add = (cells: readonly string[], line: number): boolean => {
    const value = timeNumber(cells[0] ?? "");
    if (!Number.isFinite(value)) return false;
    if (column.length === 0) found = cells[0]!;
    lines.add(column.length, line);
    column.push(value);
    return true;
  };
  const start = (first: number, seconds: number): number | null => {
    if (how.origin === "epoch") return (first / how.perSecond) * 1000;
    if (how.origin === "elapsed") return null;
    return ((Math.floor(first) - serialOf1970) * 86400 + seconds) * 1000;
  };
  const finish = (): Outcome<FoundTimes> => {
    const seconds = column.view();
    if (how.origin === "undecidable" || seconds.length === 0) {
      const line = lines.lineOf(0);
      return failed("time-undecidable", { file: options.file ?? "", line, found });
    }
    const first = seconds[0]!;
    toSeconds(seconds, how);
    const startWallClock = start(first, seconds[0]!);
    const notices = how.origin === "serial" ? mendedNotices(seconds, lines) : [];
    return done({ format: how.format, seconds, startWallClock, dateOrder: null, notices });
  };
  return { add, finish };
};
