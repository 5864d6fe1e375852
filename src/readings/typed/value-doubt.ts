/** Temperatures that look like slips, and what may have been meant. */
import { celsiusToFahrenheit, fahrenheitToCelsius } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { celsiusOf } from "./typed-value.ts";

/** What a test with water, ice and a room around them shows, degC. */
const lowest = -40;
const highest = 130;
/** Water does not get this hot in the open, degC: a number without a letter may be degF. */
const boiling = 101;
/** A step from one reading to the next that is asked about, degC (common sense, no source). */
const longestStep = 25;
/** Cold water on its way up may go further than that: from below, to, in so many minutes. */
const warmUp = { from: 35, to: 60, minutes: 15 };
/** What was meant lies this close to the reading before, degC. */
const near = 6;
/** Without a reading before, what was meant lies in here, degC. */
const likely = { low: 0, high: 100 };

/** The reading before: degC, and how many minutes before. */
export interface Before {
  readonly celsius: number;
  readonly minutes: number;
}

interface Candidate {
  readonly text: string;
  readonly celsius: number;
}

const plain = (value: number): string => String(Number(value.toFixed(4)));

/** The other unit's letter left out, the point forgotten or misplaced, two digits changed over. */
const candidates = (digits: string, unit: TemperatureUnit): readonly Candidate[] => {
  const value = Number(digits);
  const swapped = digits.replace(/^(-?)(\d)(\d)(?!\d)/u, "$1$3$2");
  const slips = [value / 10, value / 100, value * 10, Number(swapped)];
  const other = unit === "degC" ? "F" : "C";
  const inOther = unit === "degC" ? fahrenheitToCelsius(value) : value;
  return [
    { text: `${digits}${other}`, celsius: inOther },
    ...slips.map((slip) => ({ text: plain(slip), celsius: celsiusOf(plain(slip), unit) })),
  ];
};

/** What lies near the reading before; else, for a value that cannot be at all, what a test shows. */
const suggestion = (
  digits: string,
  unit: TemperatureUnit,
  before: Before | null,
  impossible: boolean,
): string => {
  const fit = candidates(digits, unit)
    .filter((one) => one.celsius !== celsiusOf(digits, unit))
    .filter(({ celsius }) => celsius > likely.low && celsius < likely.high);
  const distance = ({ celsius }: Candidate): number =>
    before === null ? Infinity : Math.abs(celsius - before.celsius);
  const close = fit.filter((one) => distance(one) < near);
  const best = close.toSorted((a, b) => distance(a) - distance(b))[0];
  const meant = best ?? (impossible ? fit[0] : undefined);
  return meant === undefined ? "" : `Did you mean ${meant.text}?`;
};

const differenceText = (difference: number, unit: TemperatureUnit): string =>
  unit === "degF"
    ? `${(Math.abs(difference) * 1.8).toFixed(0)} degF`
    : `${Math.abs(difference).toFixed(0)} degC`;

const beforeText = (celsius: number, unit: TemperatureUnit): string =>
  plain(Number((unit === "degF" ? celsiusToFahrenheit(celsius) : celsius).toFixed(2)));

const isWarmUp = (celsius: number, before: Before): boolean =>
  celsius > before.celsius &&
  celsius <= warmUp.to &&
  before.celsius < warmUp.from &&
  before.minutes >= warmUp.minutes;

/** Why it cannot be at all, as it is written. */
const impossible = (celsius: number, unit: TemperatureUnit, hasLetter: boolean): string | null => {
  if (celsius < lowest || celsius > highest)
    return `outside ${lowest}..${highest} degC, where water tests lie`;
  return celsius > boiling && unit === "degC" && !hasLetter
    ? "hotter than boiling water in degC"
    : null;
};

/** Why it goes too far from the reading before. */
const leap = (celsius: number, unit: TemperatureUnit, before: Before | null): string | null => {
  if (before === null || isWarmUp(celsius, before)) return null;
  const step = celsius - before.celsius;
  if (Math.abs(step) <= longestStep) return null;
  return `${differenceText(step, unit)} from the reading before (${beforeText(before.celsius, unit)})`;
};

/**
 * Why a value is worth asking about (outside -40..130 degC, over boiling
 * water without a unit's letter, or more than 25 degC from the reading
 * before, warming up from below 35 to at most 60 degC left out) and what may
 * have been meant; null where it looks right.
 */
export const valueDoubt = (
  digits: string,
  unit: TemperatureUnit,
  before: Before | null,
  hasLetter: boolean,
): { readonly why: string; readonly advice: string } | null => {
  const celsius = celsiusOf(digits, unit);
  const wrong = impossible(celsius, unit, hasLetter);
  const why = wrong ?? leap(celsius, unit, before);
  return why === null ? null : { why, advice: suggestion(digits, unit, before, wrong !== null) };
};
