import { lagOneAutocorrelation } from "./summary.ts";

/** Scores are summed into at most this many blocks before their correlation is looked at. */
const mostBlocks = 500;

const sumBlocks = (values: Float64Array): Float64Array => {
  const size = Math.ceil(values.length / mostBlocks);
  const sums = new Float64Array(Math.ceil(values.length / size));
  for (let i = 0; i < values.length; i++) sums[Math.floor(i / size)]! += values[i]!;
  return sums;
};

/** Andrews 1991, eq. 5.3 and 6.4: lag for the Bartlett kernel, first-order autoregressive plug-in. */
const automaticLag = (scores: Float64Array): number => {
  const n = scores.length;
  const r = Math.min(0.97, lagOneAutocorrelation(scores));
  if (!(r > 0)) return 0;
  const strength = (4 * r * r) / ((1 - r) ** 2 * (1 + r) ** 2);
  return Math.min(Math.floor(1.1447 * Math.cbrt(strength * n)), Math.floor(n / 2));
};

/** Variance of the sum of the scores: lagged products with Bartlett weights 1 - k/(L + 1). */
const bartlettVariance = (scores: Float64Array, lag: number): number => {
  let variance = 0;
  for (let k = 0; k <= lag; k++) {
    let products = 0;
    for (let i = k; i < scores.length; i++) products += scores[i]! * scores[i - k]!;
    variance += (k === 0 ? 1 : 2 * (1 - k / (lag + 1))) * products;
  }
  return variance;
};

/**
 * Standard error of a least-squares slope whose residuals are autocorrelated
 * or uneven in spread (Newey & West 1987, Bartlett kernel, factor n/(n - 2)),
 * in units of y per unit of x. x in order; `fit` the unweighted line.
 *
 * The lag is chosen from the data (Andrews 1991). Series over 500 readings
 * have their scores (x - mean) residual summed in at most 500 consecutive
 * blocks first: the variance sought is kept, slow correlation hidden under
 * reading-to-reading noise is seen, and the time is linear. `lag` overrides
 * the choice, in blocks.
 *
 * Like all errors of this kind it comes out small where the correlation lasts
 * more than about a tenth of the record. NaN under 3 readings or without
 * spread in x.
 */
export const slopeUncertaintyAutocorrelated = (
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  fit: { readonly slope: number; readonly intercept: number },
  lag?: number,
): number => {
  const n = x.length;
  if (n < 3) return NaN;
  let centre = 0;
  for (let i = 0; i < n; i++) centre += x[i]! / n;
  const scores = new Float64Array(n);
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const away = x[i]! - centre;
    squares += away * away;
    scores[i] = away * (y[i]! - fit.intercept - fit.slope * x[i]!);
  }
  const blocks = sumBlocks(scores);
  const variance = bartlettVariance(blocks, lag ?? automaticLag(blocks));
  return squares > 0 ? Math.sqrt((variance * n) / (n - 2)) / squares : NaN;
};
