import { dayInOrder, type DateRuns, type OpenDate } from "./date-runs.ts";
import type { DateOrder } from "./time-types.ts";

/** The order found; `order` null: every candidate gives the same days. `why` null: nothing to tell. */
export interface FoundOrder {
  readonly order: DateOrder | null;
  /** The order to compute with. */
  readonly reading: DateOrder;
  readonly why: string | null;
}

/** Readings of one night, or of some nights on end, never leap by more than this, days. */
const longestStep = 7;

const leaps = (runs: DateRuns, order: DateOrder): number => {
  let count = 0;
  let previous = runs.dayOf(0, order);
  for (let run = 1; run < runs.length; run++) {
    const day = runs.dayOf(run, order);
    if (Math.abs(day - previous) > longestStep) count++;
    previous = day;
  }
  return count;
};

const sameDays = (runs: DateRuns, one: DateOrder, other: DateOrder): boolean => {
  for (let run = 0; run < runs.length; run++)
    if (runs.dayOf(run, one) !== runs.dayOf(run, other)) return false;
  return true;
};

/** Where the days tell nothing: what stands by convention, or null. */
const byConvention = (candidates: readonly DateOrder[], dotted: boolean): FoundOrder | null => {
  const dayFirst = { order: "day-first", reading: "day-first" } as const;
  if (!candidates.includes("day-first")) return null;
  // Every locale that writes dots between the parts puts the day first (CLDR date patterns, from memory).
  if (dotted) return { ...dayFirst, why: "dates with dots between their parts are written so" };
  if (candidates.includes("month-first")) return null;
  return { ...dayFirst, why: "a year of two digits stands last as a rule" };
};

/**
 * The order of day and month from a whole column of dates. `candidates` are
 * the orders in which every date of the column exists. One candidate: that.
 * Several: the one whose dates run on without leaps of more than a week, if
 * the others leap; else what dots say; else null: it cannot be told.
 */
export const decideDateOrder = (
  runs: DateRuns,
  candidates: readonly DateOrder[],
  dotted: boolean,
): FoundOrder | null => {
  const [first, ...others] = candidates;
  if (first === undefined) return null;
  if (others.length === 0) return { order: first, reading: first, why: null };
  if (others.every((order) => sameDays(runs, first, order)))
    return { order: null, reading: first, why: null };
  const smooth = candidates.filter((order) => leaps(runs, order) === 0);
  if (smooth.length === 1)
    return { order: smooth[0]!, reading: smooth[0]!, why: "so the days follow one another" };
  return byConvention(smooth.length > 0 ? smooth : candidates, dotted);
};

/**
 * The orders in which every open date so far exists. A date that exists in
 * none of them is turned away and counted: one misprint must not turn the
 * column, many must stop it.
 */
export interface OrderVotes {
  /** False: turned away. */
  take(date: OpenDate): boolean;
  candidates(): readonly DateOrder[];
}

export const createOrderVotes = (said: "day-first" | "month-first" | undefined): OrderVotes => {
  let left: readonly DateOrder[] =
    said === undefined ? ["day-first", "month-first", "year-first"] : [said];
  return {
    take: (date) => {
      const fits = left.filter((order) => !Number.isNaN(dayInOrder(date, order)));
      if (fits.length > 0) left = fits;
      return fits.length > 0;
    },
    candidates: () => left,
  };
};

/** Whether a date exists in any order at all: if not, it is a misprint and no contradiction. */
export const isDateInAnyOrder = (date: OpenDate): boolean =>
  (["day-first", "month-first", "year-first"] as const).some(
    (order) => !Number.isNaN(dayInOrder(date, order)),
  );
