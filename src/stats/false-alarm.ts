import { logGamma } from "./log-gamma.ts";
import { standardDeviation } from "./summary.ts";

/**
 * Chance that independent normal noise gives a periodogram peak of at least
 * `power` (0 to 1, share of variance explained) anywhere in a band of
 * frequencies `bandwidth` wide: Baluev 2008, eq. 5 and 6 with the extreme-value
 * bound for the least-squares statistic against a fitted constant.
 *
 * `times` and 1/`bandwidth` are in the same unit. At least 4 readings.
 */
export const baluevFalseAlarm = (
  power: number,
  times: ArrayLike<number>,
  bandwidth: number,
): number => {
  const n = times.length;
  const rest = Math.max(0, 1 - power);
  const single = rest ** ((n - 3) / 2);
  // The spread of the times over n, not n - 1: they are no sample.
  const spread = standardDeviation(times) * Math.sqrt((n - 1) / n);
  const width = bandwidth * spread * Math.sqrt(4 * Math.PI);
  const gamma = Math.sqrt(2 / (n - 1)) * Math.exp(logGamma((n - 1) / 2) - logGamma((n - 2) / 2));
  const crossings = gamma * width * rest ** ((n - 4) / 2) * Math.sqrt(((n - 1) * power) / 2);
  // 1 - (1 - single) exp(-crossings), without losing small values.
  return single - (1 - single) * Math.expm1(-crossings);
};
