import type { Notice } from "../../notice.ts";
import type { Outcome } from "../../problem.ts";
import type { TimeFormat } from "../readings-file.ts";

/** How the parts of a date stand. */
export type DateOrder = "year-first" | "day-first" | "month-first";

export interface TimeOptions {
  /** What the person said; without it the whole column decides. */
  readonly dateOrder?: "day-first" | "month-first";
  /** Headings of the time column(s), one for each cell of a sample. */
  readonly headings?: readonly string[];
  /** Name for problems. */
  readonly file?: string;
}

/** What the samples look like; `format` may be refined by the whole column, see `FoundTimes`. */
export interface TimeRecogniser {
  readonly format: TimeFormat;
  createAccumulator(): TimeAccumulator;
}

export interface TimeAccumulator {
  /**
   * Takes the time cell(s) of one row; `line` is 1-based in the file.
   * False: not a time, nothing was kept for this row.
   */
  add(cells: readonly string[], line: number): boolean;
  /** Reads the column as a whole; to be called once, after the last row. */
  finish(): Outcome<FoundTimes>;
}

export interface FoundTimes {
  readonly format: TimeFormat;
  /** Seconds from an arbitrary zero, one for each accepted row, in file order. */
  readonly seconds: Float64Array;
  /**
   * Wall clock of `seconds[0]` as if in UTC, ms since 1970; on 1970-01-01 where
   * only a clock, or no year, is written; null where times are elapsed or the half of the
   * day is unknown.
   */
  readonly startWallClock: number | null;
  /** Null without dates, with months as words, and where either order gives the same days. */
  readonly dateOrder: DateOrder | null;
  readonly notices: readonly Notice[];
}
