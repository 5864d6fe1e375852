import { weightedMean, weightedQuantiles, weightedStandardDeviation } from "../stats/weighted.ts";
import type { HoldReadings } from "./hold.ts";

/** The holding band and its companions, time-weighted, degC. */
export interface BandStatistics {
  readonly mean: number;
  readonly median: number;
  readonly min: number;
  readonly max: number;
  readonly standardDeviation: number;
  readonly band: { readonly low: number; readonly high: number };
}

/**
 * Holding band: where the central `share` (0 to 1) of the hold's time lies,
 * from time-weighted quantiles (stats/weighted.ts), with mean, median,
 * extremes and standard deviation over the same time. Needs one reading with
 * weight.
 */
export const describeBand = ({ celsius, weights }: HoldReadings, share: number): BandStatistics => {
  const tail = (1 - share) / 2;
  const [min, low, median, high, max] = weightedQuantiles(celsius, weights, [
    0,
    tail,
    0.5,
    1 - tail,
    1,
  ]);
  return {
    mean: weightedMean(celsius, weights),
    median: median!,
    min: min!,
    max: max!,
    standardDeviation: weightedStandardDeviation(celsius, weights),
    band: { low: low!, high: high! },
  };
};
