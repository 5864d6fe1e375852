/**
 * Temperatures as text, always in both units: the person's own first, the
 * other in brackets. Differences and rates convert without the offset of 32.
 * All arguments are degC.
 *
 * One rule for both units: the last place is decided once, by the figure in
 * degC, and both keep it. A degree of the Celsius scale is 1.8 of the other, so
 * the same place never hides what is known, and by the rule of number-format.ts
 * neither uncertainty shows more than two digits.
 */
import { celsiusDifferenceToFahrenheit, celsiusToFahrenheit } from "../quantity.ts";
import type { TemperatureUnit } from "../quantity.ts";
import { atPlace, decimalsFor, fixed, short } from "./number-format.ts";
import { otherUnit, plusMinus, unitSign } from "./writing.ts";
import type { Writing } from "./writing.ts";

const shown = (celsius: number, unit: TemperatureUnit): number =>
  unit === "degC" ? celsius : celsiusToFahrenheit(celsius);
const shownDifference = (difference: number, unit: TemperatureUnit): number =>
  unit === "degC" ? difference : celsiusDifferenceToFahrenheit(difference);

/** One text per unit, joined: "40.8 °C (105.4 °F)", with a true minus sign where there is one. */
export const both = (writing: Writing, text: (unit: TemperatureUnit) => string): string => {
  const inUnit = (unit: TemperatureUnit): string =>
    `${text(unit)}${writing.space}${unitSign(writing, unit)}`;
  const joined = `${inUnit(writing.unit)} (${inUnit(otherUnit(writing.unit))})`;
  return writing.ascii ? joined : joined.replaceAll(/-(?=\d)/g, "\u2212");
};

/** A measured temperature, to a tenth: "40.8 °C (105.4 °F)". */
export const temperature = (writing: Writing, celsius: number): string =>
  both(writing, (unit) => fixed(shown(celsius, unit), 1));

/** A temperature somebody asked for, without needless zeros: "38 °C (100.4 °F)". */
export const askedTemperature = (writing: Writing, celsius: number): string =>
  both(writing, (unit) => short(shown(celsius, unit), 1));

/** "40.2 to 41.3 °C (104.4 to 106.3 °F)". */
export const temperatureRange = (writing: Writing, low: number, high: number): string =>
  both(writing, (unit) => `${fixed(shown(low, unit), 1)} to ${fixed(shown(high, unit), 1)}`);

/** "38 to 43 °C (100.4 to 109.4 °F)", both ends to a tenth if either needs it: "105.8 to 113.0 °F". */
export const askedRange = (writing: Writing, low: number, high: number): string =>
  both(writing, (unit) => {
    const ends = [low, high].map((end) => fixed(shown(end, unit), 1));
    return ends.map((end) => (allWhole(ends) ? short(Number(end), 0) : end)).join(" to ");
  });

const allWhole = (texts: readonly string[]): boolean => texts.every((text) => text.endsWith(".0"));

const differenceDecimals = (value: number): number => (Math.abs(value) < 0.0995 ? 2 : 1);

/** A difference, a margin, a swing: "0.9 °C (1.6 °F)"; two decimals when small. */
export const difference = (writing: Writing, value: number): string =>
  both(writing, (unit) => fixed(shownDifference(value, unit), differenceDecimals(value)));

/** A difference named, without needless zeros: "100 °C (180 °F)". */
export const askedDifference = (writing: Writing, value: number): string =>
  both(writing, (unit) => short(shownDifference(value, unit), 1));

/** An accuracy as it was stated: "±1 °C (±1.8 °F)". */
export const tolerance = (writing: Writing, value: number): string =>
  both(writing, (unit) => plusMinus(writing) + short(shownDifference(value, unit), 2));

/** By the rule of number-format.ts, but never finer than hundredths: no thermometer here tells more. */
const uncertaintyFigure = (size: number, unit: TemperatureUnit): string =>
  size > 0 ? atPlace(shownDifference(size, unit), Math.min(decimalsFor(size), 2)) : fixed(size, 2);

/** What a figure smaller than can be told is less than, degC. */
const leastTold = 0.01;
const isTiny = (size: number): boolean => size < leastTold / 2;

/** A standard uncertainty on its own: "0.29 °C (0.52 °F)", "< 0.01 °C (0.02 °F)". */
export const uncertainty = (writing: Writing, value: number): string =>
  value > 0 && isTiny(value)
    ? `<${writing.space}${difference(writing, leastTold)}`
    : both(writing, (unit) => uncertaintyFigure(value, unit));

/** An expanded uncertainty on its own: "±0.7 °C (±1.2 °F)". */
export const expandedUncertainty = (writing: Writing, value: number): string =>
  both(writing, (unit) => plusMinus(writing) + uncertaintyFigure(value, unit));

/** "40.83 ± 0.31 °C (105.50 ± 0.56 °F)". */
export const temperatureWithUncertainty = (
  writing: Writing,
  celsius: number,
  standardUncertainty: number,
): string =>
  both(writing, (unit) => pairText(writing, shown(celsius, unit), standardUncertainty, unit));

/** Never finer than tenths: what is only expected is not known to hundredths. */
const expectedDecimals = (standardUncertainty: number): number =>
  standardUncertainty > 0 ? Math.min(Math.max(decimalsFor(standardUncertainty), 0), 1) : 1;

/** A temperature to be expected, rounded by its uncertainty: "38.0 °C (100.4 °F)". */
export const expectedTemperature = (
  writing: Writing,
  celsius: number,
  standardUncertainty: number,
): string =>
  both(writing, (unit) => fixed(shown(celsius, unit), expectedDecimals(standardUncertainty)));

/** Its limits, in the same places: "37.1 and 38.9 °C (98.8 and 102.0 °F)". */
export const expectedLimits = (
  writing: Writing,
  { low, high }: { readonly low: number; readonly high: number },
  standardUncertainty: number,
): string =>
  both(writing, (unit) => {
    const decimals = expectedDecimals(standardUncertainty);
    return `${fixed(shown(low, unit), decimals)} and ${fixed(shown(high, unit), decimals)}`;
  });

/** A difference with its doubt, rounded together: "0.83 ± 0.31 °C (1.50 ± 0.56 °F)". */
export const differenceWithUncertainty = (writing: Writing, value: number, doubt: number): string =>
  both(writing, (unit) => pairText(writing, shownDifference(value, unit), doubt, unit));

/** The same with its sign, as what is to be added: "+0.83 ± 0.31 °C (+1.50 ± 0.56 °F)". */
export const correctionWithUncertainty = (writing: Writing, value: number, doubt: number): string =>
  both(writing, (unit) => {
    const text = pairText(writing, shownDifference(value, unit), doubt, unit);
    return (Number.parseFloat(text) > 0 ? "+" : "") + text;
  });

/** `value` as shown in the unit, `doubt` in degC; never parted at a line's end. */
const pairText = (
  writing: Writing,
  value: number,
  doubt: number,
  unit: TemperatureUnit,
): string => {
  const known = doubt > 0 && Number.isFinite(doubt);
  const decimals = known ? decimalsFor(doubt) : 2;
  const size = known ? atPlace(shownDifference(doubt, unit), decimals) : "0";
  return [atPlace(value, decimals), plusMinus(writing), size].join(writing.space);
};

/** A rate: "+0.02 °C (+0.04 °F) an hour", "less than 0.01 °C (0.02 °F) an hour". */
export const perHour = (writing: Writing, value: number): string =>
  isTiny(Math.abs(value))
    ? `less than ${difference(writing, leastTold)} an hour`
    : `${both(writing, (unit) => signedHundredths(value, unit))} an hour`;

/** "-0.03 to +0.05 °C (-0.05 to +0.09 °F) an hour", "within ±0.01 °C (±0.02 °F) an hour". */
export const perHourRange = (writing: Writing, low: number, high: number): string => {
  if (isTiny(Math.max(Math.abs(low), Math.abs(high)))) {
    return `within ${tolerance(writing, leastTold)} an hour`;
  }
  const ends = (unit: TemperatureUnit): string =>
    [low, high].map((end) => signedHundredths(end, unit)).join(" to ");
  return `${both(writing, ends)} an hour`;
};

/** What is nothing in degC is nothing in degF. */
const signedHundredths = (value: number, unit: TemperatureUnit): string => {
  if (isTiny(Math.abs(value))) return fixed(0, 2);
  const text = fixed(shownDifference(value, unit), 2);
  return value > 0 ? `+${text}` : text;
};
