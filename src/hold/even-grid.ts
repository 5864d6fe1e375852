import { usualStep } from "../stats/time-weights.ts";

/** The hold on an even grid: what autocorrelation, periodogram and cycle windows need. */
export interface EvenSeries {
  readonly start: number;
  /** Minutes. */
  readonly step: number;
  readonly values: Float64Array;
}

const finestStep = 0.5;
const mostCells = 2400;

/**
 * Readings averaged into even cells, empty cells (gaps, disturbances) filled
 * by straight lines. The step is the usual one of the readings, but no less
 * than half a minute and a 2400th of the span. Linear time.
 */
export const evenSeries = (readings: {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
}): EvenSeries => {
  const { minutes, celsius } = readings;
  const start = minutes[0]!;
  const span = minutes[minutes.length - 1]! - start;
  const step = Math.max(usualStep(minutes), finestStep, span / mostCells);
  const count = Math.max(1, Math.floor(span / step + 1.5));
  const sums = new Float64Array(count);
  const counts = new Float64Array(count);
  for (let index = 0; index < minutes.length; index += 1) {
    const cell = Math.min(count - 1, Math.round((minutes[index]! - start) / step));
    sums[cell]! += celsius[index]!;
    counts[cell]! += 1;
  }
  return { start, step, values: filled(sums, counts) };
};

const filled = (sums: Float64Array, counts: Float64Array): Float64Array => {
  const values = sums.map((sum, cell) => (counts[cell]! > 0 ? sum / counts[cell]! : NaN));
  let last = -1;
  for (let cell = 0; cell < values.length; cell += 1) {
    if (counts[cell] === 0) continue;
    if (last >= 0) bridge(values, last, cell);
    last = cell;
  }
  return values;
};

const bridge = (values: Float64Array, from: number, to: number): void => {
  const step = (values[to]! - values[from]!) / (to - from);
  for (let gap = from + 1; gap < to; gap += 1) values[gap] = values[gap - 1]! + step;
};

/** Running mean over `width` cells (rounded to odd), shortened at the ends. */
export const runningMean = (values: Float64Array, width: number): Float64Array => {
  const reach = Math.floor(width / 2);
  const sums = new Float64Array(values.length + 1);
  for (let cell = 0; cell < values.length; cell += 1) sums[cell + 1] = sums[cell]! + values[cell]!;
  return values.map((_, cell) => {
    const from = Math.max(0, cell - reach);
    const to = Math.min(values.length, cell + reach + 1);
    return (sums[to]! - sums[from]!) / (to - from);
  });
};
