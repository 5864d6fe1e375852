import { correctDigits } from "../stats/correct-digits.ts";
import { printedNumber } from "./printed-number.ts";
import type { Asked, ReferenceValue } from "./reference-values.ts";

/** How a found value stands to the published one, in words that rounding cannot change. */
export interface Agreement {
  readonly agrees: boolean;
  readonly found: string;
  readonly agreement: string;
  readonly asked: string;
}

/** Beyond this many digits the last ones are rounding, and may differ between machines. */
const mostDigits = 11;

/** The next 1, 2 or 5 times a power of ten that is not less. */
const roundedUp = (difference: number): number => {
  const power = Math.floor(Math.log10(difference));
  const step = [1, 2, 5, 10].find((one) => difference <= one * 10 ** power * (1 + 1e-9)) ?? 10;
  return Number(`${step}e${power}`);
};

/**
 * A difference, rounded up, but not beyond what is allowed where it is allowed.
 * A hundredth of that and what rounding makes are not told apart.
 */
const shownDifference = (difference: number, allowed: number, target: number): string => {
  const least = Math.min(allowed, Math.max(allowed / 100, 1e-13 * Math.abs(target)));
  const shown = roundedUp(Math.max(difference, least));
  const capped = difference <= allowed ? Math.min(shown, allowed) : shown;
  return String(Number(capped.toPrecision(3)));
};

/** A number to so many significant digits, written as its source writes numbers. */
const written = (found: number, digits: number, hasExponent: boolean): string => {
  if (found === 0) return "0";
  if (hasExponent) return found.toExponential(digits - 1);
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(found)));
  return decimals >= 0 && decimals <= 30 ? found.toFixed(decimals) : found.toPrecision(digits);
};

const byDigits = (value: ReferenceValue, digits: number): Agreement => {
  const { value: target, significantDigits, hasExponent } = printedNumber(value.published);
  const reached = correctDigits(value.found, target);
  const most = Math.max(mostDigits, Math.floor(digits));
  const shown = Math.max(0, Math.min(most, Math.floor(reached)));
  const kept = Math.max(1, Math.min(shown, significantDigits));
  return {
    agrees: reached >= digits,
    found: written(value.found, kept, hasExponent),
    agreement: shown === most ? `${most} digits or more` : `${shown} digits`,
    asked: `${digits} digits`,
  };
};

const byDifference = (value: ReferenceValue, allowed: number, asked: string): Agreement => {
  const { value: target, lastPlace, hasExponent } = printedNumber(value.published);
  const difference = Math.abs(value.found - target);
  const place = Math.max(lastPlace, 10 ** Math.floor(Math.log10(allowed)));
  const size = Math.floor(Math.log10(Math.max(Math.abs(value.found), place)));
  const digits = Math.max(1, size - Math.round(Math.log10(place)) + 1);
  return {
    agrees: difference <= allowed,
    found: written(Math.abs(value.found) < place / 2 ? 0 : value.found, digits, hasExponent),
    agreement: `within ${shownDifference(difference, allowed, target)}`,
    asked,
  };
};

/** Whether a value agrees as asked, and how to say so. */
export const agreementOf = (value: ReferenceValue, asked: Asked): Agreement => {
  const { value: target, lastPlace } = printedNumber(value.published);
  if (asked === "as printed") return byDifference(value, lastPlace / 2, "as printed");
  if ("digits" in asked) return byDigits(value, asked.digits);
  if ("absolute" in asked)
    return byDifference(value, asked.absolute, `within ${Number(asked.absolute.toPrecision(3))}`);
  const allowed = asked.relative * Math.abs(target);
  return byDifference(value, allowed, `within ${asked.relative} of it`);
};
