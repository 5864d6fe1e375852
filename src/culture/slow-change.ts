import { cholesky, solveLower } from "../stats/cholesky.ts";

/**
 * The slow part of a hold: everything slower than the thermostat's cycle, as a
 * Gaussian process in hours from the start of the hold. It is the sum of
 *
 * - a level nobody knows beforehand,
 * - a day-and-night wave of 24 h with unknown phase, and a wander that forgets
 *   itself over some hours: both are the room, let through by a factor between
 *   nearly nothing (a good thermostat) and one (a heater of fixed power),
 * - the appliance's own wander,
 * - what is left of the approach to the hold, dying away exponentially.
 *
 * How strong each part is, is not known either: a grid of strengths is weighted
 * by a stated prior and by how well each explains the night that was seen.
 *
 * Source of the method: Gaussian process regression as in Rasmussen & Williams,
 * Gaussian Processes for Machine Learning (2006), 2.2 and 5.4. The strengths
 * and their prior weights are this project's own assumptions.
 */
export interface SlowStrengths {
  /** Standard deviation of the day-and-night wave, degC. */
  readonly daily: number;
  /** Standard deviation of the room's wander as it reaches the food, degC. */
  readonly roomWander: number;
  /** Standard deviation of the appliance's own wander, degC. */
  readonly ownWander: number;
  /** Standard deviation at the hold's start of what is left of the approach, degC. */
  readonly approach: number;
  /** Time constant of that rest, hours. */
  readonly approachHours: number;
}

/** Block means of the tested hold. */
export interface SlowBlocks {
  /** Middle of each block, hours from the start of the hold. */
  readonly hours: Float64Array;
  /** Mean of each block, degC. */
  readonly means: Float64Array;
  /** Variance of each block's mean from noise and part cycles, degC^2. */
  readonly variances: Float64Array;
}

const dayHours = 24;
const roomWanderHours = 4;
const ownWanderHours = 2;
/** So wide that the level is left to the readings. */
const levelVariance = 400;

/**
 * Correlation of a wander that is smooth because water evens it out: the
 * Matern form with one derivative (Rasmussen & Williams 4.17).
 */
const smoothCorrelation = (apart: number): number => {
  const scaled = Math.sqrt(3) * apart;
  return (1 + scaled) * Math.exp(-scaled);
};

/** Covariance of the slow part at two times (hours from the start of the hold), degC^2. */
export const slowCovariance = (a: number, b: number, strengths: SlowStrengths): number => {
  const apart = Math.abs(a - b);
  return (
    levelVariance +
    strengths.daily ** 2 * Math.cos((2 * Math.PI * apart) / dayHours) +
    strengths.roomWander ** 2 * smoothCorrelation(apart / roomWanderHours) +
    strengths.ownWander ** 2 * Math.exp(-apart / ownWanderHours) +
    strengths.approach ** 2 * Math.exp(-(Math.max(0, a) + Math.max(0, b)) / strengths.approachHours)
  );
};

/** The slow part fitted under one set of strengths. */
export interface SlowFit {
  readonly strengths: SlowStrengths;
  readonly logLikelihood: number;
  /** Lower triangle of the blocks' covariance. */
  readonly lower: Float64Array;
  /** L^-1 (means - offset). */
  readonly whitened: Float64Array;
  /** Subtracted from the means before fitting, so that the wide prior on the level stays harmless. */
  readonly offset: number;
}

/**
 * Fits the slow part under given strengths.
 *
 * @returns null when the covariance is not positive definite (blocks at equal times without noise)
 */
export const fitSlowChange = (blocks: SlowBlocks, strengths: SlowStrengths): SlowFit | null => {
  const size = blocks.hours.length;
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      matrix[i * size + j] = slowCovariance(blocks.hours[i]!, blocks.hours[j]!, strengths);
    }
    matrix[i * size + i]! += blocks.variances[i]!;
  }
  const lower = cholesky(matrix, size);
  if (lower === null) return null;
  const offset = blocks.means.reduce((sum, value) => sum + value, 0) / size;
  const whitened = solveLower(
    lower,
    size,
    blocks.means.map((value) => value - offset),
  );
  return {
    strengths,
    logLikelihood: logLikelihood(lower, whitened, size),
    lower,
    whitened,
    offset,
  };
};

const logLikelihood = (lower: Float64Array, whitened: Float64Array, size: number): number => {
  let value = -0.5 * size * Math.log(2 * Math.PI);
  for (let i = 0; i < size; i += 1) {
    value -= 0.5 * whitened[i]! ** 2 + Math.log(lower[i * size + i]!);
  }
  return value;
};

/** Where the slow part is expected at other times, with its covariance. */
export interface SlowPrediction {
  readonly means: Float64Array;
  /** Row-major, degC^2. */
  readonly covariance: Float64Array;
}

/** Predicts the slow part at `hours` from a fit to `blocks`. */
export const predictSlowChange = (
  fit: SlowFit,
  blocks: SlowBlocks,
  hours: Float64Array,
): SlowPrediction => {
  const size = blocks.hours.length;
  const columns = Array.from(hours, (hour) =>
    solveLower(
      fit.lower,
      size,
      Array.from(blocks.hours, (block) => slowCovariance(hour, block, fit.strengths)),
    ),
  );
  const means = Float64Array.from(columns, (column) => fit.offset + dot(column, fit.whitened));
  const covariance = new Float64Array(hours.length ** 2);
  for (let i = 0; i < hours.length; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      const value =
        slowCovariance(hours[i]!, hours[j]!, fit.strengths) - dot(columns[i]!, columns[j]!);
      covariance[i * hours.length + j] = value;
      covariance[j * hours.length + i] = value;
    }
  }
  return { means, covariance };
};

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
};
