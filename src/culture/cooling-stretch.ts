import { readingNoise } from "../hold/noise.ts";
import type { HeatingReadings } from "./lethal-rate.ts";
import type { CoolingPoints } from "./newton-cooling.ts";

/** Points a fit looks at. */
const mostPoints = 40;
/** What stirring and currents in a pot do to a single point, degC (our assumption). */
const stirring = 0.03;

/**
 * Readings first .. last - 1 as at most 40 points, each the mean of its
 * neighbours, with a standard uncertainty: the readings' noise over the root of
 * their number, the display's step (resolution / sqrt(12), JCGM 100:2008,
 * F.2.2.1), which only averages out where the temperature runs through several
 * steps, and 0.03 degC for currents in the pot.
 */
export const coolingPoints = (
  { minutes, celsius }: HeatingReadings,
  first: number,
  last: number,
  resolution: number,
): CoolingPoints => {
  const size = Math.max(1, Math.ceil((last - first) / mostPoints));
  const count = Math.ceil((last - first) / size);
  const noise = readingNoise(celsius.subarray(first, last));
  const points = {
    minutes: new Float64Array(count),
    celsius: new Float64Array(count),
    uncertainty: new Float64Array(count),
  };
  for (let point = 0; point < count; point += 1) {
    // Counted from the end, so that the last readings make a full point.
    const to = last - (count - 1 - point) * size;
    const from = Math.max(first, to - size);
    points.minutes[point] = meanOf(minutes, from, to);
    points.celsius[point] = meanOf(celsius, from, to);
    const steps = resolution > 0 ? (celsius[from]! - celsius[to - 1]!) / resolution : 1;
    points.uncertainty[point] = Math.hypot(
      noise / Math.sqrt(to - from),
      resolution / Math.sqrt(12 * Math.max(1, steps)),
      stirring,
    );
  }
  return points;
};

const meanOf = (values: Float64Array, from: number, to: number): number => {
  let sum = 0;
  for (let index = from; index < to; index += 1) sum += values[index]!;
  return sum / (to - from);
};
