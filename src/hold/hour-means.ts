import type { HoldReadings } from "./hold.ts";

/** Share of an hour that must carry readings for its mean to count. */
const leastFilled = 0.5;

/**
 * Lowest and highest of the time-weighted means over whole hours from the
 * start of the hold, degC. Hours less than half filled (disturbances, gaps, the
 * last piece) are left out; with no hour filled, the mean of all is both.
 */
export const hourMeans = (
  readings: HoldReadings,
): { readonly low: number; readonly high: number } => {
  const { minutes, celsius, weights } = readings;
  const start = minutes[0]!;
  const hours = Math.floor((minutes[minutes.length - 1]! - start) / 60) + 1;
  const sums = new Float64Array(hours);
  const times = new Float64Array(hours);
  for (let index = 0; index < minutes.length; index += 1) {
    const hour = Math.floor((minutes[index]! - start) / 60);
    sums[hour]! += weights[index]! * celsius[index]!;
    times[hour]! += weights[index]!;
  }
  let low = Infinity;
  let high = -Infinity;
  let [sum, time] = [0, 0];
  for (let hour = 0; hour < hours; hour += 1) {
    sum += sums[hour]!;
    time += times[hour]!;
    if (times[hour]! < leastFilled * 60) continue;
    low = Math.min(low, sums[hour]! / times[hour]!);
    high = Math.max(high, sums[hour]! / times[hour]!);
  }
  return low <= high ? { low, high } : { low: sum / time, high: sum / time };
};
