import { effectiveDegreesOfFreedom } from "./effective-degrees-of-freedom.ts";
import type { UncertaintyShare } from "./effective-degrees-of-freedom.ts";
import { studentTCdf, studentTQuantile } from "./student-t.ts";

/** A value with its standard uncertainty and the degrees of freedom behind that (Infinity: taken as known). */
export interface Estimate extends UncertaintyShare {
  readonly value: number;
}

/** First minus second. */
export interface DifferenceOfMeans extends UncertaintyShare {
  readonly difference: number;
  /** Difference in standard uncertainties. */
  readonly t: number;
  /** Two-sided: of a difference this large or larger where there is none. */
  readonly probability: number;
  /** Ends of the interval at the level asked for. */
  readonly low: number;
  readonly high: number;
}

/**
 * Difference of two independent estimates, `first` minus `second`: uncertainties
 * in quadrature, degrees of freedom by Welch and Satterthwaite, Student's t.
 * For plain samples, with standard uncertainty s / sqrt(n) and n - 1 degrees of
 * freedom, this is Welch's test of two means.
 *
 * Source: Welch 1947, Biometrika 34:28 (from memory); JCGM 100:2008, G.4.1. Both
 * in one unit. Whatever the two have in common must be left out of both.
 * Smallest sample: 2 behind either uncertainty, that is 1 degree of freedom.
 * Without any uncertainty every difference counts: t is infinite (0 where equal).
 *
 * @param level of the interval, above 0 and below 1
 */
export const differenceOfMeans = (
  first: Estimate,
  second: Estimate,
  level = 0.95,
): DifferenceOfMeans => {
  const difference = first.value - second.value;
  const standardUncertainty = Math.hypot(first.standardUncertainty, second.standardUncertainty);
  const degreesOfFreedom = effectiveDegreesOfFreedom([first, second]);
  const t = difference === 0 ? 0 : difference / standardUncertainty;
  const reach = standardUncertainty * studentTQuantile(0.5 + level / 2, degreesOfFreedom);
  return {
    difference,
    standardUncertainty,
    degreesOfFreedom,
    t,
    probability: 2 * studentTCdf(-Math.abs(t), degreesOfFreedom),
    low: difference - reach,
    high: difference + reach,
  };
};
