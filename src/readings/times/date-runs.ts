import { growableFloats } from "../rows/growable.ts";
import { daysFromCivil, fullYear, isCivil } from "./civil-days.ts";
import type { DateOrder } from "./time-types.ts";

/** A date whose order is open: its parts as they stand; `year` is full, from the third. */
export interface OpenDate {
  readonly first: number;
  readonly second: number;
  readonly year: number;
  readonly shortYear: boolean;
}

const pack = ({ first, second, year, shortYear }: OpenDate): number =>
  (year * 10000 + first * 100 + second) * 2 + (shortYear ? 1 : 0);

const unpack = (packed: number): OpenDate => {
  const parts = Math.floor(packed / 2);
  return {
    first: Math.floor(parts / 100) % 100,
    second: parts % 100,
    year: Math.floor(parts / 10000),
    shortYear: packed % 2 === 1,
  };
};

/** Days since 1970-01-01 of an open date read in one order; NaN where there is no such date. */
export const dayInOrder = (date: OpenDate, order: DateOrder): number => {
  const day = order === "day-first" ? date.first : date.second;
  const month = order === "day-first" ? date.second : date.first;
  if (order !== "year-first")
    return isCivil(date.year, month, day) ? daysFromCivil(date.year, month, day) : NaN;
  const year = fullYear(date.first, 2);
  const last = date.year % 100;
  return date.shortYear && isCivil(year, date.second, last)
    ? daysFromCivil(year, date.second, last)
    : NaN;
};

/**
 * The dates of a column as runs of rows with the same date: one entry for each
 * run, so that millions of rows of one night take no room.
 */
export interface DateRuns {
  readonly length: number;
  addKnown(row: number, day: number): void;
  addOpen(row: number, date: OpenDate): void;
  /** First row of a run. */
  rowOf(run: number): number;
  /** Days since 1970-01-01 of a run; open dates read in `order`. */
  dayOf(run: number, order: DateOrder): number;
}

export const createDateRuns = (): DateRuns => {
  const rows = growableFloats();
  const days = growableFloats();
  const open = growableFloats();
  const add = (row: number, day: number, packed: number): void => {
    rows.push(row);
    days.push(day);
    open.push(packed);
  };
  return {
    get length() {
      return rows.length;
    },
    addKnown: (row, day) => add(row, day, 0),
    addOpen: (row, date) => add(row, NaN, pack(date)),
    rowOf: (run) => rows.at(run),
    dayOf: (run, order) => {
      const day = days.at(run);
      return Number.isNaN(day) ? dayInOrder(unpack(open.at(run)), order) : day;
    },
  };
};
