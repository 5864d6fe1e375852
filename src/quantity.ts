/**
 * Quantities as brands, so that a temperature, a temperature difference and a
 * length of time cannot be taken for one another, and their conversions.
 *
 * The arithmetic of the core runs in degrees Celsius, minutes and hours;
 * degrees Fahrenheit exist only where something is read in or shown.
 */

declare const dimension: unique symbol;
type Branded<Name extends string> = number & { readonly [dimension]: Name };

/** A temperature on the Celsius scale (ITS-90), degC. */
export type Celsius = Branded<"Celsius">;
/** A difference of two temperatures, an uncertainty or a spread, degC (= K). */
export type CelsiusDifference = Branded<"CelsiusDifference">;
/** A length of time in minutes. */
export type Minutes = Branded<"Minutes">;
/** A length of time in hours. */
export type Hours = Branded<"Hours">;
/** A probability or a share, 0 to 1. */
export type Fraction = Branded<"Fraction">;

export const celsius = (value: number): Celsius => value as Celsius;
export const celsiusDifference = (value: number): CelsiusDifference => value as CelsiusDifference;
export const minutes = (value: number): Minutes => value as Minutes;
export const hours = (value: number): Hours => value as Hours;
export const fraction = (value: number): Fraction => value as Fraction;

/** The scale a person reads: degC or degF. */
export type TemperatureUnit = "degC" | "degF";

/** degF to degC for a temperature: (F - 32) / 1.8, exact by definition. */
export const fahrenheitToCelsius = (fahrenheit: number): Celsius =>
  celsius((fahrenheit - 32) / 1.8);

/** degC to degF for a temperature. */
export const celsiusToFahrenheit = (value: number): number => value * 1.8 + 32;

/** degF to degC for a difference: no offset, only the scale. */
export const fahrenheitDifferenceToCelsius = (difference: number): CelsiusDifference =>
  celsiusDifference(difference / 1.8);

/** degC to degF for a difference. */
export const celsiusDifferenceToFahrenheit = (difference: number): number => difference * 1.8;
