import { median } from "./median.ts";
import { normalQuantile } from "./normal.ts";
import { mean } from "./summary.ts";

/** Slope in units of y per unit of x, `low` to `high` its confidence interval. */
export interface TheilSenFit {
  readonly slope: number;
  readonly intercept: number;
  readonly low: number;
  readonly high: number;
}

/** Most points whose pairs are all taken: 600 give 179,700 slopes. */
export const mostTheilSenPoints = 600;

/** Mean of the middle half of a block, which is sorted for it. */
const midmean = (block: Float64Array): number => {
  block.sort();
  const cut = Math.floor(block.length / 4);
  return mean(block.subarray(cut, block.length - cut));
};

/** Midmean of each of at most `blocks` consecutive runs of (nearly) equal length. */
const thin = (values: ArrayLike<number>, blocks: number): Float64Array => {
  const all = Float64Array.from(values);
  if (all.length <= blocks) return all;
  const bound = (k: number): number => Math.round((k * all.length) / blocks);
  return Float64Array.from({ length: blocks }, (_, k) =>
    midmean(all.subarray(bound(k), bound(k + 1))),
  );
};

const sortedSlopes = (x: Float64Array, y: Float64Array): Float64Array => {
  const slopes = new Float64Array((x.length * (x.length - 1)) / 2);
  let count = 0;
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      const run = x[j]! - x[i]!;
      if (run !== 0) slopes[count++] = (y[j]! - y[i]!) / run;
    }
  }
  return slopes.subarray(0, count).toSorted();
};

/** Sum of k (k - 1)(2k + 5) over groups of k equal values. */
const tieTerm = (values: Float64Array): number => {
  const sorted = values.toSorted();
  let sum = 0;
  let run = 1;
  for (let i = 1; i <= sorted.length; i++) {
    if (i < sorted.length && sorted[i] === sorted[i - 1]) run++;
    else {
      sum += run * (run - 1) * (2 * run + 5);
      run = 1;
    }
  }
  return sum;
};

/** Standard deviation of Kendall's S, ties heeded (Sen 1968, eq. 2.6). */
const scoreDeviation = (x: Float64Array, y: Float64Array): number => {
  const n = x.length;
  return Math.sqrt(Math.max(0, n * (n - 1) * (2 * n + 5) - tieTerm(x) - tieTerm(y)) / 18);
};

const middleOfSorted = (sorted: Float64Array): number =>
  (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;

/**
 * Robust line: the median of the slopes of all pairs (Theil 1950), intercept
 * median(y) - slope median(x), with Sen's (1968) confidence interval from the
 * order of the slopes (`confidence` 0.95 unless told), which takes the points
 * as independent.
 *
 * All pairs are taken up to 600 points; a longer series, which must then be in
 * order of x, is first replaced by 600 consecutive blocks, each by the mean of
 * its middle half: as good as a median against outliers to a quarter of a
 * block on one side, and, unlike it, not held to the steps of rounded readings.
 * Smallest sample 2, for an interval worth the name about 5. All NaN where no
 * two x differ.
 */
export const theilSen = (
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  confidence = 0.95,
): TheilSenFit => {
  const xs = thin(x, mostTheilSenPoints);
  const ys = thin(y, mostTheilSenPoints);
  const slopes = sortedSlopes(xs, ys);
  const count = slopes.length;
  if (count === 0) return { slope: NaN, intercept: NaN, low: NaN, high: NaN };
  const slope = middleOfSorted(slopes);
  const width = normalQuantile(0.5 + confidence / 2) * scoreDeviation(xs, ys);
  const below = Math.round((count - width) / 2) - 1;
  const above = Math.round((count + width) / 2);
  return {
    slope,
    intercept: median(ys) - slope * median(xs),
    low: slopes[Math.max(below, 0)]!,
    high: slopes[Math.min(above, count - 1)]!,
  };
};
