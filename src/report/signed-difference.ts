/** Differences between two tests as text, with their signs and in both units; all arguments are degC. */
import { celsiusDifferenceToFahrenheit } from "../quantity.ts";
import type { TemperatureUnit } from "../quantity.ts";
import { fixed } from "./number-format.ts";
import { both } from "./temperature-text.ts";
import type { Writing } from "./writing.ts";

const shown = (difference: number, unit: TemperatureUnit): number =>
  unit === "degC" ? difference : celsiusDifferenceToFahrenheit(difference);

/** Tenths, or hundredths where the doubt is below a tenth of a degree: two nights are never compared more finely. */
const decimalsFor = (standardUncertainty: number): number => (standardUncertainty < 0.0995 ? 2 : 1);

/** What is nothing in degC at that place is nothing in degF. */
const signed = (value: number, unit: TemperatureUnit, decimals: number): string => {
  if (Number(fixed(value, decimals)) === 0) return fixed(0, decimals);
  const text = fixed(shown(value, unit), decimals);
  return value > 0 ? `+${text}` : text;
};

/** "+0.1 °C (+0.2 °F)". */
export const signedDifference = (
  writing: Writing,
  value: number,
  standardUncertainty: number,
): string => both(writing, (unit) => signed(value, unit, decimalsFor(standardUncertainty)));

/** "-0.5 to +0.7 °C (-0.9 to +1.3 °F)". */
export const signedRange = (
  writing: Writing,
  { low, high }: { readonly low: number; readonly high: number },
  standardUncertainty: number,
): string =>
  both(writing, (unit) => {
    const decimals = decimalsFor(standardUncertainty);
    return `${signed(low, unit, decimals)} to ${signed(high, unit, decimals)}`;
  });

/** Its size alone: "0.1 °C (0.2 °F)". */
export const sizeOfDifference = (
  writing: Writing,
  value: number,
  standardUncertainty: number,
): string =>
  both(writing, (unit) =>
    signed(Math.abs(value), unit, decimalsFor(standardUncertainty)).replace("+", ""),
  );

/** Whether it would be printed as nothing. */
export const looksLikeNone = (value: number, standardUncertainty: number): boolean =>
  Number(fixed(value, decimalsFor(standardUncertainty))) === 0;
