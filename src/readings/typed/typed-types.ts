/** Shapes of readings typed by hand. Wall-clock seconds count from 1970 as if in UTC. */
import type { Problem } from "../../problem.ts";
import type { TemperatureUnit } from "../../quantity.ts";

/** When a reading was taken, as far as its line says. */
export type TypedTime =
  /** `day` counts from 1970-01-01 and is null where no date is written; `seconds` from midnight. */
  | { readonly kind: "clock"; readonly day: number | null; readonly seconds: number }
  | { readonly kind: "now" }
  /** So many seconds after the last reading. */
  | { readonly kind: "later"; readonly seconds: number };

/** A temperature as written: a plain decimal number with a point, and the unit's letter if there is one. */
export interface TypedValue {
  readonly digits: string;
  readonly unit: TemperatureUnit | null;
}

/** One line; a value is null where a "-" says that it was not taken. */
export interface TypedLine {
  readonly time: TypedTime;
  readonly values: readonly (TypedValue | null)[];
  readonly comment: string | null;
  /** A "!" at its end says that it is right, odd as it looks. */
  readonly confirmed: boolean;
}

/** One reading in its place; `values` are plain decimal numbers in the log's unit, one for each probe. */
export interface LogReading {
  readonly seconds: number;
  readonly values: readonly (string | null)[];
  readonly comment: string | null;
}

/** All readings of one test, in order of time; a reading's number is its place, from 1. */
export interface TypedLog {
  readonly unit: TemperatureUnit;
  /** Nobody said the unit: the first reading's letter, where it has one, decides. */
  readonly unitAssumed: boolean;
  readonly probes: readonly string[];
  /** Date of the first reading, in days from 1970-01-01, where the person said it. */
  readonly firstDay: number | null;
  /** No date was said or implied yet: the readings may all belong a day earlier. */
  readonly dayAssumed: boolean;
  readonly readings: readonly LogReading[];
}

/** Something odd that may still be right; "a-day-back" moves all readings when it is confirmed. */
export interface Doubt {
  readonly kind: "value" | "time" | "a-day-back";
  readonly problem: Problem;
}

/** A changed log, with what should be asked before it is taken; or why it cannot be. */
export type Placed =
  | {
      readonly kind: "placed";
      readonly log: TypedLog;
      readonly number: number;
      readonly doubts: readonly Doubt[];
    }
  | { readonly kind: "refused"; readonly problem: Problem };
