import { daysFromCivil } from "./civil-days.ts";
import type { DateRuns } from "./date-runs.ts";
import type { DateOrder } from "./time-types.ts";

/** Dates without a year are kept as of this one, which has every date there is. */
export const anyYear = 1972;
const firstDay = daysFromCivil(anyYear, 1, 1);
const leapDay = 59;

/** Days of the runs in one order, from 1 January 1970 on, the years counted on by continuity. */
const runOn = (runs: DateRuns, order: DateOrder): Float64Array => {
  const days = Float64Array.from(
    { length: runs.length },
    (_, run) => runs.dayOf(run, order) - firstDay,
  );
  const isLeapYear = days.includes(leapDay);
  const length = isLeapYear ? 366 : 365;
  let turns = 0;
  let before = Number.NaN;
  for (let run = 0; run < days.length; run++) {
    const ofYear = !isLeapYear && days[run]! > leapDay ? days[run]! - 1 : days[run]!;
    const step = ofYear + turns * length - before;
    // Over half a year back is the new year; over half a year on, a row of the old one.
    if (step < -length / 2) turns++;
    else if (step > length / 2) turns--;
    days[run] = ofYear + turns * length;
    before = days[run]!;
  }
  return days;
};

/**
 * Runs of dates that have no year, as days that run on over the new year. The
 * first stands in 1970, as times without a date do; the year has 29 February
 * only where the file shows it.
 */
export const runsWithoutYear = (runs: DateRuns): DateRuns => {
  const known = new Map<DateOrder, Float64Array>();
  return {
    get length() {
      return runs.length;
    },
    addKnown: runs.addKnown,
    addOpen: runs.addOpen,
    rowOf: runs.rowOf,
    dayOf: (run, order) => {
      const days = known.get(order) ?? runOn(runs, order);
      known.set(order, days);
      return days[run] ?? Number.NaN;
    },
  };
};
