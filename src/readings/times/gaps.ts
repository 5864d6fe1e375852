/** A step far longer than the usual one; `index` is the first reading after it. */
export interface Gap {
  readonly index: number;
  readonly minutes: number;
}

export interface Gaps {
  /** Minutes; NaN under two readings. */
  readonly medianStep: number;
  /** In order of time. */
  readonly gaps: readonly Gap[];
}

/** Below this many steps there is no usual one: readings by hand. */
const fewestSteps = 20;
/** A gap is more than so many medians, so many 90 % steps, and so many minutes. */
const timesMedian = 5;
const timesUpper = 3;
const shortestGap = 1;

const sortedSteps = (minutes: Float64Array): Float64Array => {
  const steps = new Float64Array(Math.max(0, minutes.length - 1));
  for (let index = 0; index < steps.length; index++)
    steps[index] = minutes[index + 1]! - minutes[index]!;
  return steps.toSorted();
};

const middle = (sorted: Float64Array): number => {
  const half = sorted.length >> 1;
  if (sorted.length === 0) return NaN;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
};

/**
 * Steps far beyond the usual one in times that increase: longer than five
 * times the median step, three times the step that 90 % of steps do not
 * exceed, and one minute. With fewer than 20 steps (readings by hand) there
 * are none. The bounds are common practice, no source. Time n log n.
 */
export const findGaps = (minutes: Float64Array): Gaps => {
  const sorted = sortedSteps(minutes);
  const medianStep = middle(sorted);
  if (sorted.length < fewestSteps) return { medianStep, gaps: [] };
  const upper = sorted[Math.floor(0.9 * (sorted.length - 1))]!;
  const bound = Math.max(timesMedian * medianStep, timesUpper * upper, shortestGap);
  const gaps: Gap[] = [];
  for (let index = 1; index < minutes.length; index++) {
    const step = minutes[index]! - minutes[index - 1]!;
    if (step > bound) gaps.push({ index, minutes: step });
  }
  return { medianStep, gaps };
};
