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
