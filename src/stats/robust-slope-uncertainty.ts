import { mean } from "./summary.ts";

/** Scores are summed into at most this many blocks before their correlation is looked at. */
const mostBlocks = 500;
/** Blocks are merged in pairs while more correlated than this and more than twice as many as that. */
const correlatedBlocks = 0.5;
const fewestBlocks = 24;

const sumRuns = (values: Float64Array, size: number): Float64Array => {
  const sums = new Float64Array(Math.ceil(values.length / size));
  for (let i = 0; i < values.length; i++) sums[Math.floor(i / size)]! += values[i]!;
  return sums;
};

/** Lag-one autocorrelation of scores about zero, which is their mean by construction. */
const carryOver = (scores: Float64Array): number => {
  let products = 0;
  let squares = 0;
  for (let i = 0; i < scores.length; i++) {
    products += i === 0 ? 0 : scores[i]! * scores[i - 1]!;
    squares += scores[i]! ** 2;
  }
  return squares > 0 ? products / squares : 0;
};

const summedBlocks = (scores: Float64Array): Float64Array => {
  let blocks = sumRuns(scores, Math.ceil(scores.length / mostBlocks));
  while (blocks.length >= 2 * fewestBlocks && carryOver(blocks) > correlatedBlocks) {
    blocks = sumRuns(blocks, 2);
  }
  return blocks;
};

/** Andrews 1991, eq. 5.3 and 6.4: lag for the Bartlett kernel, first-order autoregressive plug-in. */
const automaticLag = (scores: Float64Array): number => {
  const r = carryOver(scores);
  const strength = (4 * r * r) / ((1 - r) ** 2 * (1 + r) ** 2);
  const lag = Math.floor(1.1447 * Math.cbrt(strength * scores.length));
  return Math.min(lag, Math.floor(scores.length / 2));
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
 * Long-run variance of the sum by prewhitening (Andrews & Monahan 1992): what
 * one block hands on to the next is taken out, the rest summed by the kernel,
 * then put back. The share handed on is estimated low after a line was fitted,
 * by about (2 + 4 r)/n, which is added (Sul, Phillips & Choi 2005).
 */
const prewhitenedVariance = (scores: Float64Array): number => {
  const n = scores.length;
  const found = carryOver(scores);
  const handedOn = found > 0 ? Math.min(mostHandedOn, found + (2 + 4 * found) / n) : found;
  const rest = new Float64Array(n - 1);
  for (let i = 1; i < n; i++) rest[i - 1] = scores[i]! - handedOn * scores[i - 1]!;
  const variance = bartlettVariance(rest, automaticLag(rest)) / (1 - handedOn) ** 2;
  return (variance * n) / (n - 1);
};

/**
 * Beyond this share the division by (1 - share) would let chance decide;
 * Andrews & Monahan (1992) stop at 0.97, blocks hanging together less allow less.
 */
const mostHandedOn = 0.9;

/**
 * Standard error of a least-squares slope whose residuals are autocorrelated
 * or uneven in spread, in units of y per unit of x. x in order; `fit` the
 * unweighted line.
 *
 * Newey & West 1987 (Bartlett kernel, factor n/(n - 2)) on the scores
 * (x - mean) residual, prewhitened, the lag chosen from the data. Scores are first summed
 * in at most 500 consecutive blocks, longer ones where blocks still hang
 * together: the variance sought is kept, slow correlation hidden under
 * reading-to-reading noise is seen, and the time is linear. With `lag` given:
 * the plain Newey-West error at that lag, no blocks, no prewhitening.
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
  const centre = mean(x);
  const scores = new Float64Array(n);
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const away = x[i]! - centre;
    squares += away * away;
    scores[i] = away * (y[i]! - fit.intercept - fit.slope * x[i]!);
  }
  const variance =
    lag === undefined ? prewhitenedVariance(summedBlocks(scores)) : bartlettVariance(scores, lag);
  return squares > 0 ? Math.sqrt((variance * n) / (n - 2)) / squares : NaN;
};
