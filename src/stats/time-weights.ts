/**
 * Time weighting: each reading stands for half the interval to each
 * neighbour (the trapezoidal rule's cells). Uneven sampling is normal, so
 * every statistic of the hold uses these instead of counting readings.
 */

/** Intervals this many times longer than the usual step are gaps. */
const gapSteps = 5;
/** Nothing in a pot of water hides within this time, so it is never a gap, minutes. */
const shortestGap = 5;

/** Median interval between readings, minutes; from at most 1001 evenly picked intervals. 0 for fewer than 2. */
export const usualStep = (minutes: Float64Array): number => {
  const intervals = minutes.length - 1;
  if (intervals < 1) return 0;
  const picked = Math.min(intervals, 1001);
  const steps = new Float64Array(picked);
  for (let pick = 0; pick < picked; pick += 1) {
    const index = Math.floor((pick * intervals) / picked);
    steps[pick] = minutes[index + 1]! - minutes[index]!;
  }
  steps.sort();
  return steps[picked >> 1]!;
};

/** Interval from which two neighbours are taken to have a gap between them, minutes. */
export const gapLimit = (step: number): number => Math.max(gapSteps * step, shortestGap);

/** A stretch of time, minutes from the first reading. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Weights (minutes) of the readings `first` .. `last - 1`, all lying inside
 * one stretch: a cell reaches half-way to the neighbours, never beyond the
 * stretch, and no further than half of `limit` to either side.
 */
export const cellWeights = (
  minutes: Float64Array,
  first: number,
  last: number,
  stretch: Stretch,
  limit: number,
): Float64Array => {
  const weights = new Float64Array(last - first);
  for (let index = first; index < last; index += 1) {
    const time = minutes[index]!;
    const before = index > first ? (time - minutes[index - 1]!) / 2 : time - stretch.from;
    const after = index < last - 1 ? (minutes[index + 1]! - time) / 2 : stretch.to - time;
    weights[index - first] = Math.min(before, limit / 2) + Math.min(after, limit / 2);
  }
  return weights;
};
