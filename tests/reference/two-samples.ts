import type { Estimate } from "../../src/stats/two-means.ts";

/** A sample's mean with its standard error, in the plain way. */
export const estimateOf = (sample: readonly number[]): Estimate => {
  const n = sample.length;
  const value = sample.reduce((sum, one) => sum + one, 0) / n;
  const squares = sample.reduce((sum, one) => sum + (one - value) ** 2, 0);
  return { value, standardUncertainty: Math.sqrt(squares / (n - 1) / n), degreesOfFreedom: n - 1 };
};

/** Student 1908, as data set sleep of R 4.2.2: hours of sleep gained. */
export const sleepA = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
export const sleepB = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

/** Yields of two processes, as in the tests of the R package TOSTER. */
// prettier-ignore
export const yieldA = [452, 874, 554, 447, 356, 754, 558, 574, 664, 682, 547, 435, 245];
// prettier-ignore
export const yieldB = [546, 547, 774, 465, 459, 665, 467, 365, 589, 534, 456, 651, 654, 665, 546, 537];
