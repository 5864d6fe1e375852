/** A typed temperature, kept digit by digit. */
import { celsiusToFahrenheit, fahrenheitToCelsius } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { TypedValue } from "./typed-types.ts";

const form = /^([+-]?)(\d{0,4})(?:[.,](\d{0,6}))?(?:°|º|deg)?([CF])?$/iu;

/** Whether a word says that this probe was not read. */
export const isNotTaken = (word: string): boolean => /^[-–—]$/u.test(word);

/** "41.2", "41,2", "105.8F", "-3 °C" without blanks; null where it is no temperature. */
export const readTypedValue = (word: string): TypedValue | null => {
  const match = form.exec(word.replace("−", "-"));
  const [, sign = "", whole = "", part = "", letter] = match ?? [];
  if (match === null || whole + part === "") return null;
  const number = `${whole.replace(/^0+(?=\d)/u, "") || "0"}${part === "" ? "" : `.${part}`}`;
  const isZero = Number(number) === 0;
  const unit = letter === undefined ? null : letter.toUpperCase() === "F" ? "degF" : "degC";
  return { digits: sign === "-" && !isZero ? `-${number}` : number, unit };
};

const decimalsOf = (digits: string): number => digits.split(".")[1]?.length ?? 0;

/**
 * The digits in another unit, with one decimal more than were written, so that
 * they give the written value back.
 */
const converted = (digits: string, to: TemperatureUnit): string => {
  const value =
    to === "degC" ? fahrenheitToCelsius(Number(digits)) : celsiusToFahrenheit(Number(digits));
  return value.toFixed(decimalsOf(digits) + 1).replace(/^-(?=0(?:\.0*)?$)/u, "");
};

/** A typed value's digits in the log's unit; as written where that is its unit. */
export const digitsIn = ({ digits, unit }: TypedValue, logUnit: TemperatureUnit): string =>
  unit === null || unit === logUnit ? digits : converted(digits, logUnit);

/** degC of digits in a unit. */
export const celsiusOf = (digits: string, unit: TemperatureUnit): number =>
  unit === "degF" ? fahrenheitToCelsius(Number(digits)) : Number(digits);
