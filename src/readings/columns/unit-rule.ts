import { isKelvinLike } from "./kelvin.ts";
import { fahrenheitToCelsius } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";

/** Unit read from the values, or the middle value that leaves it open. */
export type UnitFinding =
  | { readonly kind: "unit"; readonly unit: TemperatureUnit; readonly middle: number }
  | { readonly kind: "undecidable"; readonly middle: number };

/** A middle up to here is degC: 55 degF (13 degC) is colder than any warm hold's middle. */
const highestCelsiusMiddle = 55;
const lowestFahrenheitMiddle = 65;
/** Water boils at 100 degC; half a degree and a little for the thermometer. */
const boiling = 100.6;
/** As degF the middle must be a temperature that appliances and kitchens have. */
const leastMiddle = 20;
const mostMiddle = 60;
const freezing = 32;
/** Fillers such as 999 and -127 say nothing about the unit. */
const isReading = (value: number): boolean => value > -60 && value < 260;

/** So many values give the middle; of more, every second, third ... is taken. */
const enough = 1_000_000;

/** Middle of up to a thousand values spread over each column, whatever they are. */
const medianOf = (columns: readonly Float64Array[]): number => {
  const taken: number[] = [];
  for (const column of columns) {
    const stride = Math.max(1, Math.ceil(column.length / 1000));
    for (let at = 0; at < column.length; at += stride)
      if (!Number.isNaN(column[at])) taken.push(column[at]!);
  }
  return Float64Array.from(taken).toSorted()[taken.length >> 1] ?? Number.NaN;
};

interface Summary {
  readonly least: number;
  readonly most: number;
  readonly middle: number;
}

const summarise = (columns: readonly Float64Array[]): Summary => {
  const total = columns.reduce((sum, column) => sum + column.length, 0);
  const stride = Math.max(1, Math.ceil(total / enough));
  const taken: number[] = [];
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const column of columns) {
    for (let at = 0; at < column.length; at += 1) {
      const value = column[at]!;
      if (!isReading(value)) continue;
      if (value < least) least = value;
      if (value > most) most = value;
      if (at % stride === 0) taken.push(value);
    }
  }
  const sorted = Float64Array.from(taken).toSorted();
  return { least, most, middle: sorted[sorted.length >> 1] ?? Number.NaN };
};

/**
 * The unit of readings that carry none, from their median, least and greatest:
 * a middle up to 55 is degC; above 65 degF, where the greatest is above what
 * boiling water shows in degC, or all could be degF in a kitchen; otherwise
 * open. Temperatures in kelvin are never assumed: open as well. The bounds are common sense about water tests, no source. `columns`
 * may hold NaN.
 */
export const unitFromValues = (columns: readonly Float64Array[]): UnitFinding => {
  const kelvin = medianOf(columns);
  if (isKelvinLike(kelvin)) return { kind: "undecidable", middle: kelvin };
  const { least, most, middle } = summarise(columns);
  if (!(middle > highestCelsiusMiddle)) return { kind: "unit", unit: "degC", middle };
  const asCelsius = fahrenheitToCelsius(middle);
  const isKitchen = asCelsius >= leastMiddle && asCelsius <= mostMiddle && least >= freezing;
  if (middle > lowestFahrenheitMiddle && (most > boiling || isKitchen))
    return { kind: "unit", unit: "degF", middle };
  return { kind: "undecidable", middle };
};
