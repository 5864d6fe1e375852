import { dayInOrder, type OpenDate } from "./time-dates.ts";
import type { DateOrder } from "./time-types.ts";

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
