import type { GrowthLimits } from "./culture.ts";

/** Temperatures between which growth is modelled, degC. */
export interface CardinalTemperatures {
  readonly minimum: number;
  readonly optimum: number;
  readonly maximum: number;
}

/**
 * The cardinal temperatures of an organism, where the model can be asked: null
 * where one of them is not known, or where the optimum does not lie between the
 * middle of the other two and the maximum, as the model demands.
 */
export const cardinalTemperatures = (limits: GrowthLimits): CardinalTemperatures | null => {
  if (limits.minimum === null || limits.optimum === null || limits.maximum === null) return null;
  const minimum = limits.minimum.celsius;
  const optimum = limits.optimum.celsius;
  const maximum = limits.maximum.celsius;
  const fits = optimum > (minimum + maximum) / 2 && optimum < maximum;
  return fits ? { minimum, optimum, maximum } : null;
};

/**
 * Growth rate at a temperature relative to that at the optimum, 0 to 1, by the
 * cardinal temperature model with inflection; 0 at and outside the limits.
 *
 * Source: Rosso et al. 1993, J. Theor. Biol. 162:447 (formula from memory). An
 * estimate of a model from a species' limits, of which strains differ by several
 * degrees: it says nothing about safety.
 *
 * @param cardinal as `cardinalTemperatures` gives them
 * @param celsius degC
 */
export const relativeRate = (cardinal: CardinalTemperatures, celsius: number): number => {
  const { minimum, optimum, maximum } = cardinal;
  if (!(celsius > minimum && celsius < maximum)) return Number.isNaN(celsius) ? NaN : 0;
  const rise = optimum - minimum;
  const bend = rise * (celsius - optimum) - (optimum - maximum) * (optimum + minimum - 2 * celsius);
  const rate = ((celsius - maximum) * (celsius - minimum) ** 2) / (rise * bend);
  // Rounding can pass the optimum's own rate by a last digit.
  return Math.min(1, rate);
};

/**
 * The same for an organism as the catalogue has it, null where the model cannot
 * be asked (see `cardinalTemperatures`).
 */
export const growthRate = (limits: GrowthLimits, celsius: number): number | null => {
  const cardinal = cardinalTemperatures(limits);
  return cardinal === null ? null : relativeRate(cardinal, celsius);
};
