/** The usual step of a column of times, seconds, and how usual it is. */
export interface UsualStep {
  /** Median of the steps forward; NaN without any. */
  readonly median: number;
  /** Share of the steps, those to an equal stamp left out, within half a median of it, 0 to 1. */
  readonly share: number;
}

/** So many steps, spread over the column, tell the median well enough. */
const enough = 20_000;

/** The usual step from up to 20 000 steps spread evenly over `seconds`. */
export const usualStep = (seconds: Float64Array): UsualStep => {
  const stride = Math.max(1, Math.floor(seconds.length / enough));
  const steps: number[] = [];
  for (let index = 1; index < seconds.length; index += stride)
    steps.push(seconds[index]! - seconds[index - 1]!);
  const forward = Float64Array.from(steps.filter((step) => step > 0)).toSorted();
  const median = forward[forward.length >> 1] ?? NaN;
  const near = steps.filter((step) => step !== 0 && Math.abs(step - median) <= median / 2).length;
  const moved = steps.filter((step) => step !== 0).length;
  return { median, share: moved === 0 ? 0 : near / moved };
};
