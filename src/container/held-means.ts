import { effectiveSampleSize } from "../stats/autocorrelation.ts";
import { fitLine } from "../stats/line-fit.ts";
import { standardDeviation } from "../stats/summary.ts";
import { weightedMean } from "../stats/weighted.ts";
import { gapLimit, usualStep } from "../stats/time-weights.ts";
import { type Course, timeWeights } from "./course.ts";
import { followBath } from "./follow-bath.ts";

/** Time-weighted means over the hold that bath and food share, degC. */
export interface HeldMeans {
  readonly bath: number;
  readonly food: number;
  /** The bath as followed with the lag; the bath itself where the lag is not known. */
  readonly followed: number;
  /** Standard uncertainty of `followed` - `food` from the scatter of the readings. */
  readonly scatter: number;
}

/**
 * Means of bath and food at the food's readings in the hold.
 *
 * The scatter is that of the followed bath minus the food: a thermostat's swing
 * is in both and so drops out, as it does from the truth. Its trend is taken
 * out and the effective number of readings heeded (JCGM 100, 4.2.3, with the
 * integrated autocorrelation time).
 *
 * @param held the food's readings in the hold, at least 3, all within the bath's
 */
export const heldMeans = (bath: Course, held: Course, lag: number | null): HeldMeans => {
  const weights = timeWeights(held.minutes, gapLimit(usualStep(held.minutes)));
  const plain = followBath(bath, 0, held.minutes);
  const followed = lag === null ? plain : followBath(bath, lag, held.minutes);
  const apart = followed.map((value, i) => value - held.celsius[i]!);
  const line = fitLine(held.minutes, apart);
  const rest = apart.map((value, i) => value - line.intercept - line.slope * held.minutes[i]!);
  return {
    bath: weightedMean(plain, weights),
    food: weightedMean(held.celsius, weights),
    followed: weightedMean(followed, weights),
    scatter: standardDeviation(rest) / Math.sqrt(effectiveSampleSize(rest)),
  };
};
