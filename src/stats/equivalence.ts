import type { UncertaintyShare } from "./effective-degrees-of-freedom.ts";
import { studentTCdf, studentTQuantile } from "./student-t.ts";

/** Whether a difference is shown to be small. */
export interface Equivalence {
  /** p of the test against a difference at or below -bound. */
  readonly againstLow: number;
  /** p of the test against a difference at or above +bound. */
  readonly againstHigh: number;
  /** The larger of the two: p of the whole. */
  readonly probability: number;
  /** Both are rejected: the difference lies between the bounds. */
  readonly equivalent: boolean;
  /** Interval at the level 1 - 2 alpha; it lies between the bounds exactly where `equivalent`. */
  readonly low: number;
  readonly high: number;
}

/**
 * Two one-sided tests that a difference lies between -bound and +bound. A plain
 * test that finds no difference does not show that there is none; this one
 * takes the difference as large until the readings deny it.
 *
 * Source: Schuirmann 1987, J. Pharmacokinet. Biopharm. 15:657 (from memory).
 * Both tests are at level alpha, and so is the whole. Smallest sample: 1 degree
 * of freedom; Infinity takes the uncertainty as known. A bound of 0 or below
 * is never met. Without uncertainty the difference itself decides.
 *
 * @param difference in the unit of the bound
 * @param alpha above 0, below 1/2
 */
export const equivalence = (
  {
    difference,
    standardUncertainty,
    degreesOfFreedom,
  }: UncertaintyShare & {
    readonly difference: number;
  },
  bound: number,
  alpha = 0.05,
): Equivalence => {
  const tail = (distance: number): number =>
    standardUncertainty === 0
      ? Number(!(distance > 0))
      : studentTCdf(-distance / standardUncertainty, degreesOfFreedom);
  const againstLow = tail(bound + difference);
  const againstHigh = tail(bound - difference);
  const probability = Math.max(againstLow, againstHigh);
  const reach = standardUncertainty * studentTQuantile(1 - alpha, degreesOfFreedom);
  return {
    againstLow,
    againstHigh,
    probability,
    equivalent: probability < alpha,
    low: difference - reach,
    high: difference + reach,
  };
};
