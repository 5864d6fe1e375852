import type { Hold, HoldReadings } from "../hold/hold.ts";
import { normalQuantile } from "../stats/normal.ts";
import { studentTQuantile } from "../stats/student-t.ts";
import { weightedQuantiles, weightedStandardDeviation } from "../stats/weighted.ts";

/** How the food moves about the slow part: the thermostat's swing and everything fast. */
export interface FastResidual {
  /** Equally likely values, degC, in rising order. */
  readonly values: Float64Array;
  /** The highest it goes, degC. */
  readonly top: number;
}

/** Readings' noise belongs to the logger, not to the food; more than this is taken for the food's own. */
const loggerNoiseLimit = 0.15;
/** Below this many readings the quantiles are taken from a t distribution instead of from the readings. */
const fewReadings = 40;
const denseReadings = 100;

/**
 * The fast part of the hold as `count` equally likely values.
 *
 * Many readings: their own weighted quantiles, drawn together by the share of
 * the variance that is the logger's noise. Few readings: a t distribution
 * about zero with n - 2 degrees of freedom, widened for the next reading by
 * sqrt(1 + 1/n) (the prediction interval of statistics textbooks), and never
 * narrower than the display's step allows one to see.
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
    return fewResiduals(residuals, spread, resolution, probabilities);
  }
  const shrink = noiseShrink(spread, hold, residuals.length);
  const quantiles = weightedQuantiles(residuals, readings.weights, [...probabilities, 0.999]);
  return {
    values: Float64Array.from(quantiles.slice(0, count), (value) => shrink * value),
    top: shrink * quantiles[count]!,
  };
};

const noiseShrink = (spread: number, hold: Hold, count: number): number => {
  if (count < denseReadings || spread === 0) return 1;
  const noise = Math.min(hold.noise, loggerNoiseLimit);
  return Math.sqrt(Math.max(0, 1 - (noise / spread) ** 2));
};

const fewResiduals = (
  residuals: Float64Array,
  spread: number,
  resolution: number,
  probabilities: readonly number[],
): FastResidual => {
  const freedom = Math.max(1, residuals.length - 2);
  const unbiased = spread * Math.sqrt(residuals.length / freedom);
  const scale =
    Math.max(unbiased, resolution / Math.sqrt(12)) * Math.sqrt(1 + 1 / residuals.length);
  const values = Float64Array.from(
    probabilities,
    (p) => scale * (freedom > 2 ? studentTQuantile(p, freedom) : 1.5 * normalQuantile(p)),
  );
  return { values, top: values.at(-1)! };
};
