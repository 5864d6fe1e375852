import { compensatedSum } from "./summary.ts";

/**
 * Weighted mean, in the unit of the values; weights are not negative and need
 * not sum to one (minutes each reading stands for, say). NaN without weight.
 */
export const weightedMean = (values: ArrayLike<number>, weights: ArrayLike<number>): number => {
  const total = compensatedSum(weights);
  let first = 0;
  for (let i = 0; i < values.length; i++) first += weights[i]! * values[i]!;
  first /= total;
  let rest = 0;
  for (let i = 0; i < values.length; i++) rest += weights[i]! * (values[i]! - first);
  return first + rest / total;
};

/**
 * Weighted standard deviation sqrt(sum w (x - m)^2 / sum w): the spread over
 * the time the weights stand for, with no n - 1. NaN without weight.
 */
export const weightedStandardDeviation = (
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
): number => {
  const centre = weightedMean(values, weights);
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += weights[i]! * (values[i]! - centre) ** 2;
  return Math.sqrt(squares / compensatedSum(weights));
};

/** Distinct values in order, with where in the cumulative weight each begins and ends to count. */
interface Steps {
  readonly values: Float64Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
  readonly total: number;
}

const lastAtMost = (sorted: Float64Array, length: number, sought: number): number => {
  let low = 0;
  let high = length - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if (sorted[middle]! <= sought) low = middle;
    else high = middle - 1;
  }
  return low;
};

const keepWeighty = (values: ArrayLike<number>, weights: ArrayLike<number>): Float64Array => {
  const kept = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) if (weights[i]! > 0) kept[count++] = values[i]!;
  return kept.subarray(0, count);
};

/** Sorted distinct values at the front of `values`; returns how many. */
const sortDistinct = (values: Float64Array): number => {
  values.sort();
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    if (i === 0 || values[i]! !== values[count - 1]!) values[count++] = values[i]!;
  }
  return count;
};

const makeSteps = (values: ArrayLike<number>, weights: ArrayLike<number>): Steps => {
  const distinct = keepWeighty(values, weights);
  const count = sortDistinct(distinct);
  const from = new Float64Array(count);
  const to = new Float64Array(count);
  // First pass: `from` gathers each value's weight, `to` how often it occurs.
  for (let i = 0; i < values.length; i++) {
    const weight = weights[i]!;
    if (!(weight > 0)) continue;
    const at = lastAtMost(distinct, count, values[i]!);
    from[at]! += weight;
    to[at]! += 1;
  }
  let total = 0;
  for (let i = 0; i < count; i++) {
    const weight = from[i]!;
    const halfOfOne = weight / to[i]! / 2;
    from[i] = total + halfOfOne;
    total += weight;
    to[i] = total - halfOfOne;
  }
  return { values: distinct.subarray(0, count), from, to, total };
};

const quantileOf = (steps: Steps, p: number): number => {
  const { values, from, to, total } = steps;
  const last = values.length - 1;
  if (last < 0 || Number.isNaN(p)) return NaN;
  const sought = p * total;
  if (sought <= from[0]!) return values[0]!;
  const at = lastAtMost(from, last + 1, sought);
  if (at === last || sought <= to[at]!) return values[at]!;
  const share = (sought - to[at]!) / (from[at + 1]! - to[at]!);
  return values[at]! + share * (values[at + 1]! - values[at]!);
};

/**
 * Weighted quantiles for several shares `ps` (0 to 1), in the unit of the
 * values; sorts once.
 *
 * Method: each reading stands at the middle of its own piece of the cumulative
 * weight, and values between are interpolated linearly; beyond the first and
 * last middle the extreme value holds. Equal readings share their weight
 * evenly, so the order of the input does not matter. With equal weights this
 * is Hazen's plotting position (definition 5 of Hyndman & Fan 1996). NaN
 * without weight. Time n log n.
 */
export const weightedQuantiles = (
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  ps: readonly number[],
): number[] => {
  const steps = makeSteps(values, weights);
  return ps.map((p) => quantileOf(steps, p));
};
