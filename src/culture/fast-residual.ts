import type { Hold, HoldReadings } from "../hold/hold.ts";
import { normalQuantile } from "../stats/normal.ts";
import { weightedQuantiles, weightedStandardDeviation } from "../stats/weighted.ts";

/** How the food moves about the slow part: the thermostat's swing and everything fast. */
export interface FastResidual {
  /** Equally likely values, degC, in rising order. */
  readonly values: Float64Array;
  /** The highest it goes, degC. */
  readonly top: number;
  /** Degrees of freedom of the spread's size; Infinity where many readings show it. */
  readonly degreesOfFreedom: number;
}

/** Readings' noise belongs to the logger, not to the food; more than this is taken for the food's own. */
const loggerNoiseLimit = 0.15;
/** Below this many readings the shape is taken as normal, its size as uncertain. */
export const fewReadings = 40;
const denseReadings = 100;

/**
 * The fast part of the hold as `count` equally likely values.
 *
 * Many readings: their own weighted quantiles, drawn together by the share of
 * the variance that is the logger's noise and display step. Few readings: a
 * normal distribution of the readings' standard deviation, with n - 2 degrees
 * of freedom and never narrower than the display's step allows one to see.
 *
 * @param residuals readings minus slow part, degC
 */
export const fastResidual = (
  residuals: Float64Array,
  readings: HoldReadings,
  hold: Hold,
  resolution: number,
  count: number,
): FastResidual => {
  const spread = weightedStandardDeviation(residuals, readings.weights);
  const probabilities = Array.from({ length: count }, (_, index) => (index + 0.5) / count);
  if (residuals.length < fewReadings) {
    return fewResiduals(residuals.length, spread, resolution, probabilities);
  }
  const shrink = noiseShrink(spread, hold, resolution, residuals.length);
  const quantiles = weightedQuantiles(residuals, readings.weights, probabilities);
  return {
    values: Float64Array.from(quantiles, (value) => shrink * value),
    top: shrink * highestOfThree(residuals),
    degreesOfFreedom: Infinity,
  };
};

/** Highest median of three neighbours: a top that lasts, not a lone glitch. */
const highestOfThree = (values: Float64Array): number => {
  let highest = -Infinity;
  for (let i = 1; i + 1 < values.length; i += 1) {
    const [a, b, c] = [values[i - 1]!, values[i]!, values[i + 1]!];
    const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    if (middle > highest) highest = middle;
  }
  return highest;
};

const noiseShrink = (spread: number, hold: Hold, resolution: number, count: number): number => {
  if (count < denseReadings || spread === 0) return 1;
  const noise = Math.min(hold.noise, loggerNoiseLimit);
  return Math.sqrt(Math.max(0, 1 - (noise ** 2 + resolution ** 2 / 12) / spread ** 2));
};

const fewResiduals = (
  count: number,
  spread: number,
  resolution: number,
  probabilities: readonly number[],
): FastResidual => {
  const degreesOfFreedom = Math.max(1, count - 2);
  const unbiased = spread * Math.sqrt(count / degreesOfFreedom);
  const scale = Math.max(unbiased, resolution / Math.sqrt(12));
  const values = Float64Array.from(probabilities, (p) => scale * normalQuantile(p));
  return { values, top: values.at(-1)!, degreesOfFreedom };
};

/**
 * How many times larger than observed the true standard deviation may be, for
 * a standard normal number `z`: sqrt(n / chi-square), the chi-square quantile
 * by Wilson & Hilferty (1931), held away from zero where few degrees of
 * freedom make it meaningless.
 */
export const spreadFactor = (z: number, degreesOfFreedom: number): number => {
  if (degreesOfFreedom === Infinity) return 1;
  const c = 2 / (9 * degreesOfFreedom);
  const ratio = Math.max(0.05, (1 - c + z * Math.sqrt(c)) ** 3);
  return 1 / Math.sqrt(ratio);
};
