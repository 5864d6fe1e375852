/** True figures of a stretch of a noise-free run. */
import type { Trace } from "../simulator/run.ts";
import { quantile, type TruePhase } from "../simulator/truth.ts";
import type { Interval } from "./record.ts";

export const stretch = (
  run: Trace,
  course: Float64Array,
  from: number,
  to: number,
): Float64Array => {
  const index = (seconds: number): number =>
    Math.max(0, Math.round((seconds - run.fromSeconds) / run.stepSeconds));
  return course.slice(index(from), Math.max(index(from) + 1, index(to)));
};

export function rangeOf(values: Float64Array): Interval {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) [low, high] = [Math.min(low, value), Math.max(high, value)];
  return { low, high };
}

export const meanOf = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export const centralBand = (values: Float64Array): Interval => ({
  low: quantile(values, 0.025),
  high: quantile(values, 0.975),
});

/** Mean and band of the food over stretches, seconds from switch-on; null where there are none. */
export function figuresOver(
  run: Trace,
  spells: readonly (readonly [from: number, to: number])[],
): { readonly mean: number; readonly band: Interval } | null {
  if (spells.length === 0) return null;
  const all = Float64Array.from(
    spells.flatMap(([from, to]) => [...stretch(run, run.food, from, to)]),
  );
  return { mean: meanOf(all), band: centralBand(all) };
}

/**
 * Least-squares slope, degC per hour, of the food between two times, over the
 * parts that truly are hold; null where those last less than half an hour.
 */
export function trueDrift(
  seen: Trace,
  phases: readonly TruePhase[],
  from: number,
  to: number,
): number | null {
  const parts = phases
    .filter(({ kind }) => kind === "hold")
    .map(({ fromSeconds, toSeconds }) => [Math.max(fromSeconds, from), Math.min(toSeconds, to)])
    .filter(([begin, end]) => end! > begin!);
  let [count, sumX, sumY, sumXX, sumXY] = [0, 0, 0, 0, 0];
  for (const [begin, end] of parts) {
    stretch(seen, seen.food, begin!, end!).forEach((value, at) => {
      const hours = (begin! - from + at * seen.stepSeconds) / 3600;
      [count, sumX, sumY] = [count + 1, sumX + hours, sumY + value];
      [sumXX, sumXY] = [sumXX + hours * hours, sumXY + hours * value];
    });
  }
  if (count * seen.stepSeconds < 1800) return null;
  return (count * sumXY - sumX * sumY) / (count * sumXX - sumX * sumX);
}
