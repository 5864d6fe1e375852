import { median } from "../stats/median.ts";
import type { Points } from "./grid.ts";

/** Reach of the smoothing to either side, minutes: warmth that lasts less does nothing to a culture. */
const reach = 3;

/**
 * Highest temperature from `from` to `to` minutes, degC: medians of three
 * take out stray readings, means over three minutes to either side the noise.
 * Sparse readings (further apart than that) count as they stand. Null without
 * points in the stretch.
 */
export const findPeak = (points: Points, from: number, to: number): number | null => {
  const inside: number[] = [];
  points.minutes.forEach((minute, index) => {
    if (minute >= from && minute <= to) inside.push(index);
  });
  if (inside.length === 0) return null;
  const minutes = inside.map((index) => points.minutes[index]!);
  const raw = inside.map((index) => points.celsius[index]!);
  const dense = minutes[minutes.length - 1]! - minutes[0]! <= 2 * reach * (minutes.length - 1);
  if (!dense) return Math.max(...raw);
  const clean = raw.map((value, index) =>
    index === 0 || index === raw.length - 1
      ? value
      : median([raw[index - 1]!, value, raw[index + 1]!]),
  );
  return highestMean(minutes, clean);
};

const highestMean = (minutes: readonly number[], values: readonly number[]): number => {
  let highest = -Infinity;
  let [first, last, sum] = [0, 0, 0];
  for (const minute of minutes) {
    while (last < minutes.length && minutes[last]! <= minute + reach) sum += values[last++]!;
    while (minutes[first]! < minute - reach) sum -= values[first++]!;
    highest = Math.max(highest, sum / (last - first));
  }
  return highest;
};
