import { effectiveSampleSize } from "../stats/autocorrelation.ts";
import { fitLine } from "../stats/line-fit.ts";
import { standardDeviation } from "../stats/summary.ts";
import type { EvenSeries } from "./even-grid.ts";
import type { Swing } from "./hold.ts";

export interface MeanUncertainty {
  /** Standard uncertainty of the hold's mean from the readings' own scatter, degC. */
  readonly meanUncertainty: number;
  /** Independent readings of the same standard deviation that would give it, at most the readings there are. */
  readonly effectiveReadings: number;
}

/**
 * How well the mean of the hold is known from the scatter about its trend:
 * s / sqrt(effective number of readings), the latter from the integrated
 * autocorrelation time. A regular swing is no scatter: with one, the means of
 * whole cycles take the readings' place.
 *
 * @param readings number of readings in the hold
 */
export const meanUncertaintyOf = (
  series: EvenSeries,
  swing: Swing | null,
  readings: number,
): MeanUncertainty => {
  const residuals = detrended(series.values);
  const spread = standardDeviation(residuals);
  if (!(spread > 0)) return { meanUncertainty: 0, effectiveReadings: readings };
  const cycles = swing === null ? null : cycleMeans(residuals, swing.periodMinutes / series.step);
  if (cycles === null || cycles.length < 3) {
    const effectiveReadings = Math.min(readings, effectiveSampleSize(residuals));
    return { meanUncertainty: spread / Math.sqrt(effectiveReadings), effectiveReadings };
  }
  const meanUncertainty = standardDeviation(cycles) / Math.sqrt(effectiveSampleSize(cycles));
  const effectiveReadings = Math.min(readings, (spread / meanUncertainty) ** 2);
  return { meanUncertainty, effectiveReadings };
};

const detrended = (values: Float64Array): Float64Array => {
  if (values.length < 3) return values;
  const line = fitLine(
    values.map((_, cell) => cell),
    values,
  );
  return values.map((value, cell) => value - line.intercept - line.slope * cell);
};

const cycleMeans = (values: Float64Array, cells: number): Float64Array => {
  const count = Math.floor(values.length / cells);
  return Float64Array.from({ length: count }, (_, cycle) => {
    const from = Math.round(cycle * cells);
    const to = Math.max(from + 1, Math.round((cycle + 1) * cells));
    let sum = 0;
    for (let cell = from; cell < to; cell += 1) sum += values[cell]!;
    return sum / (to - from);
  });
};
