import { fitLine } from "../stats/line-fit.ts";
import { slopeUncertaintyAutocorrelated } from "../stats/robust-slope-uncertainty.ts";
import { effectiveSampleSize } from "../stats/autocorrelation.ts";
import { studentTQuantile } from "../stats/student-t.ts";
import { theilSen } from "../stats/theil-sen.ts";
import type { EvenSeries } from "./even-grid.ts";
import { thinned } from "./smooth.ts";
import type { Drift, HoldReadings, Swing } from "./hold.ts";

/** Fewest whole cycles whose means are worth a line. */
const fewestCycles = 4;

/**
 * Drift of the hold, degC per hour: time-weighted least squares with a 95 % t
 * interval, the Theil-Sen slope beside it. A swing is averaged over whole
 * cycles first, so that the cycle cut off at either end does not tilt the line.
 *
 * Standard error: the larger of the Newey-West one (stats/
 * robust-slope-uncertainty.ts) and the plain one enlarged for the readings'
 * autocorrelation; degrees of freedom from the effective number of readings,
 * at least 1. Smallest sample 3; uncertain beyond use (infinite) below.
 */
export const findDrift = (
  readings: HoldReadings,
  series: EvenSeries,
  swing: Swing | null,
): Drift => {
  const rows =
    swing !== null && swing.cycles >= fewestCycles ? cycleMeans(series, swing.periodMinutes) : null;
  const { hours, celsius, weights } = rows ?? weightedRows(readings);
  const line = fitLine(hours, celsius, weights);
  const even = rows ?? evenRows(series);
  const standardUncertainty = slopeUncertainty(even.hours, even.celsius);
  const residuals = even.celsius.map(
    (value, index) => value - line.intercept - line.slope * even.hours[index]!,
  );
  const freedom = Math.max(1, effectiveSampleSize(residuals) - 2);
  const reach = studentTQuantile(0.975, freedom) * standardUncertainty;
  const robust = theilSen(thinned(even.hours), thinned(even.celsius)).slope;
  return {
    perHour: line.slope,
    low: line.slope - reach,
    high: line.slope + reach,
    standardUncertainty,
    robustPerHour: robust,
  };
};

interface Rows {
  readonly hours: Float64Array;
  readonly celsius: Float64Array;
  readonly weights: Float64Array;
}

const weightedRows = ({ minutes, celsius, weights }: HoldReadings): Rows => ({
  hours: minutes.map((minute) => minute / 60),
  celsius,
  weights,
});

const evenRows = ({ start, step, values }: EvenSeries): Rows => ({
  hours: values.map((_, cell) => (start + cell * step) / 60),
  celsius: values,
  weights: values.map(() => 1),
});

const cycleMeans = ({ start, step, values }: EvenSeries, period: number): Rows => {
  const cells = period / step;
  const count = Math.floor(values.length / cells);
  const hours = new Float64Array(count);
  const celsius = new Float64Array(count);
  for (let cycle = 0; cycle < count; cycle += 1) {
    const from = Math.round(cycle * cells);
    const to = Math.max(from + 1, Math.round((cycle + 1) * cells));
    let sum = 0;
    for (let cell = from; cell < to; cell += 1) sum += values[cell]!;
    celsius[cycle] = sum / (to - from);
    hours[cycle] = (start + ((from + to - 1) / 2) * step) / 60;
  }
  return { hours, celsius, weights: hours.map(() => 1) };
};

const slopeUncertainty = (hours: Float64Array, celsius: Float64Array): number => {
  const fit = fitLine(hours, celsius);
  if (fit.degreesOfFreedom < 1) return Infinity;
  const residuals = celsius.map(
    (value, index) => value - fit.intercept - fit.slope * hours[index]!,
  );
  const inflation = Math.sqrt(residuals.length / effectiveSampleSize(residuals));
  const robust = slopeUncertaintyAutocorrelated(hours, celsius, fit);
  const plain = fit.slopeUncertainty * inflation;
  return Math.max(plain, Number.isNaN(robust) ? 0 : robust);
};
