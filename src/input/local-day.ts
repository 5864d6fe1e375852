/** Days on the wall calendar, and that nothing was measured on one that is still to come. */
import { failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";

const two = (value: number): string => String(value).padStart(2, "0");

/** The day on the wall calendar where the program runs, as ISO date. */
export const localDay = (now: Date): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;

/** Fails where an ISO day lies after today: a slip of the pen, or this computer's clock is wrong. */
export const notToCome = (option: string, day: string, today: string): Outcome<never> | null => {
  if (day <= today) return null;
  const expected = `a day that is not to come (by this computer's clock it is ${today})`;
  return failed("option-invalid", { option, expected, found: day });
};
