import type { Points } from "./grid.ts";

/** The points with each temperature the mean of those within `reach` minutes of it; linear time. */
export const smoothedWithin = (points: Points, reach: number): Points => {
  const { minutes, celsius } = points;
  let [first, last, sum] = [0, 0, 0];
  const smooth = minutes.map((minute) => {
    while (last < minutes.length && minutes[last]! <= minute + reach) sum += celsius[last++]!;
    while (minutes[first]! < minute - reach) sum -= celsius[first++]!;
    return sum / (last - first);
  });
  return { ...points, celsius: smooth };
};

/** Enough pairs for a median slope. */
const mostRuns = 150;

/** Means of consecutive runs, at most 150 of them: for slopes by pairs. */
export const thinned = (values: Float64Array): Float64Array => {
  const count = Math.min(mostRuns, values.length);
  return Float64Array.from({ length: count }, (_, run) => {
    const from = Math.floor((run * values.length) / count);
    const to = Math.floor(((run + 1) * values.length) / count);
    let sum = 0;
    for (let index = from; index < to; index += 1) sum += values[index]!;
    return sum / (to - from);
  });
};
