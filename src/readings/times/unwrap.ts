import { usualStep } from "./steps.ts";

const day = 86400;
const halfDay = 43200;

/**
 * Seconds of a clock without a date, run on over midnight (or noon, or the
 * full hour: `period`), in place. A step back of up to 1/24 of the period is a
 * row out of order or a clock put back, and stays; any other step back has
 * gone past the period's end.
 */
export const unwrapClock = (seconds: Float64Array, period: number): void => {
  const longestBack = period / 24;
  let before = seconds[0] ?? 0;
  for (let index = 1; index < seconds.length; index++) {
    const step = seconds[index]! - before;
    before = seconds[index]!;
    const turned = (((step + longestBack) % period) + period) % period;
    seconds[index] = seconds[index - 1]! + turned - longestBack;
  }
};

/** How a clock that shows no half of the day goes round. */
export type ClockPeriod = 43200 | 86400 | "undecidable";

/** A step round noon may be so many usual steps long. */
const timesUsual = 3;

/**
 * Whether a clock without a date and without AM and PM goes round after 12 or
 * 24 hours. Only hours 1 to 12, and a step back over 12 o'clock, can mean 12:
 * it does where the rows then go on at their usual step; where neither reading
 * does, it cannot be told. Seconds since midnight, not yet run on.
 */
export const clockPeriod = (seconds: Float64Array): ClockPeriod => {
  let longest = 0;
  for (let index = 0; index < seconds.length; index++) {
    if (seconds[index]! < 3600 || seconds[index]! >= halfDay + 3600) return day;
    const step = seconds[index]! - (seconds[index - 1] ?? seconds[index]!);
    if (step < -day / 24) longest = Math.max(longest, ((step % halfDay) + halfDay) % halfDay);
  }
  if (longest === 0) return day;
  const usual = usualStep(seconds).median;
  return longest <= timesUsual * usual ? halfDay : "undecidable";
};

/**
 * Where dated times turn out to be of a clock that shows no half of the day:
 * the first row after a step back that 12 hours more make a usual one, in a
 * column that has only hours 1 to 12; else -1. Seconds, midnight at multiples of 86400.
 */
export const lostHalf = (seconds: Float64Array): number => {
  const longest = timesUsual * usualStep(seconds).median;
  let back = -1;
  for (let row = 0; row < seconds.length; row++) {
    const clock = ((seconds[row]! % day) + day) % day;
    if (clock < 3600 || clock >= halfDay + 3600) return -1;
    const step = seconds[row]! - (seconds[row - 1] ?? seconds[row]!);
    if (back < 0 && step > -halfDay && step < 0 && step + halfDay <= longest) back = row;
  }
  return back;
};
