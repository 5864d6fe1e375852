/**
 * Quantities as a person types them: temperatures with or without a unit,
 * differences, lengths of time, ranges and shares. A text that cannot be read
 * gives null, never NaN or a guess; the caller says what was expected.
 */
import {
  celsius,
  celsiusDifference,
  fahrenheitDifferenceToCelsius,
  fahrenheitToCelsius,
  fraction,
} from "./quantity.ts";
import type { Celsius, CelsiusDifference, Fraction, TemperatureUnit } from "./quantity.ts";

/** A temperature as typed: its value in degC, and the unit if one was written. */
export interface TypedTemperature {
  readonly celsius: Celsius;
  readonly writtenUnit: TemperatureUnit | null;
}

export interface TypedRange {
  readonly low: TypedTemperature;
  readonly high: TypedTemperature;
}

const number = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)`;
const temperatureForm = new RegExp(String.raw`^(${number})\s*(?:°|deg)?\s*([CF])?$`, "i");
const durationForm = new RegExp(String.raw`^(${number})\s*([a-z]*)$`, "i");
const clockForm = /^(\d{1,3}):([0-5]\d):([0-5]\d)$/;

/** A plain decimal number with a point or a comma; null where it is not one or not finite. */
export const parseNumber = (text: string): number | null => {
  const plain = text.trim().replace("−", "-");
  if (!new RegExp(`^${number}$`).test(plain)) return null;
  const value = Number(plain.replace(",", "."));
  return Number.isFinite(value) ? value : null;
};

const withUnit = (text: string): { value: number; unit: TemperatureUnit | null } | null => {
  const match = temperatureForm.exec(text.trim().replace("−", "-"));
  const value = parseNumber(match?.[1] ?? "");
  if (match === null || value === null) return null;
  const letter = match[2]?.toUpperCase();
  return { value, unit: letter === undefined ? null : letter === "F" ? "degF" : "degC" };
};

/** "38", "38C", "38 °C", "100.4F", "38,5": without a unit it is degC. */
export const parseTemperature = (text: string): TypedTemperature | null => {
  const found = withUnit(text);
  if (found === null) return null;
  const value = found.unit === "degF" ? fahrenheitToCelsius(found.value) : celsius(found.value);
  return { celsius: value, writtenUnit: found.unit };
};

/** "0.5", "0.5C", "0.9F": a difference, so that 0.9F is 0.5 degC. A leading "+-" is let pass. */
export const parseTemperatureDifference = (text: string): CelsiusDifference | null => {
  const found = withUnit(text.trim().replace(/^(?:\+-|\+\/-|±)\s*/, ""));
  if (found === null) return null;
  return found.unit === "degF"
    ? fahrenheitDifferenceToCelsius(found.value)
    : celsiusDifference(found.value);
};

/** "17..25", "63F..77F", "63..77F": a unit written once, at the end, stands for both. */
export const parseRange = (text: string): TypedRange | null => {
  const ends = text.split("..");
  const high = parseTemperature(ends[1] ?? "");
  if (ends.length !== 2 || high === null) return null;
  const bare = parseTemperature(ends[0] ?? "");
  if (bare === null) return null;
  const shared = bare.writtenUnit === null && high.writtenUnit === "degF";
  const low = shared ? parseTemperature(`${ends[0]}F`) : bare;
  return low === null ? null : { low, high };
};

const secondsIn: ReadonlyMap<string, number> = new Map([
  ...["s", "sec", "second", "seconds"].map((name) => [name, 1] as const),
  ...["m", "min", "minute", "minutes"].map((name) => [name, 60] as const),
  ...["h", "hour", "hours"].map((name) => [name, 3600] as const),
]);

/**
 * "5s", "30 s", "10min", "1h", "1:30:00", in seconds. A number without a unit
 * is read in `bareUnit`, and is null where the caller names none.
 */
export const parseDuration = (text: string, bareUnit?: "s" | "min" | "h"): number | null => {
  const clock = clockForm.exec(text.trim());
  if (clock !== null) return Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3]);
  const match = durationForm.exec(text.trim());
  const value = parseNumber(match?.[1] ?? "");
  const unit = match?.[2] === "" ? bareUnit : match?.[2]?.toLowerCase();
  const scale = unit === undefined ? undefined : secondsIn.get(unit);
  if (value === null || scale === undefined || value < 0) return null;
  return value * scale;
};

/** "0.95" or "95 %", as a fraction from 0 to 1; null outside that. */
export const parseFraction = (text: string): Fraction | null => {
  const percent = /^(.*?)\s*%$/.exec(text.trim());
  const value = parseNumber(percent?.[1] ?? text);
  if (value === null) return null;
  const share = percent === null ? value : value / 100;
  return share >= 0 && share <= 1 ? fraction(share) : null;
};
