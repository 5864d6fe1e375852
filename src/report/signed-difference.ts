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

const signed = (value: number, decimals: number): string => {
  const text = fixed(value, decimals);
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
};

/** "+0.1 °C (+0.2 °F)". */
export const signedDifference = (
  writing: Writing,
  value: number,
  standardUncertainty: number,
): string => both(writing, (unit) => signed(shown(value, unit), decimalsFor(standardUncertainty)));

/** "-0.5 to +0.7 °C (-0.9 to +1.3 °F)". */
export const signedRange = (
  writing: Writing,
  { low, high }: { readonly low: number; readonly high: number },
  standardUncertainty: number,
): string =>
  both(writing, (unit) => {
    const decimals = decimalsFor(standardUncertainty);
    return `${signed(shown(low, unit), decimals)} to ${signed(shown(high, unit), decimals)}`;
  });

/** Its size alone: "0.1 °C (0.2 °F)". */
export const sizeOfDifference = (
  writing: Writing,
  value: number,
  standardUncertainty: number,
): string =>
  both(writing, (unit) => fixed(Math.abs(shown(value, unit)), decimalsFor(standardUncertainty)));

/** Whether it would be printed as nothing. */
export const looksLikeNone = (
  value: number,
  standardUncertainty: number,
  { unit }: Writing,
): boolean => Number(fixed(shown(value, unit), decimalsFor(standardUncertainty))) === 0;
