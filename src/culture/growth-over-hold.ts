import type { Phase, PhaseKind } from "../hold/hold.ts";
import { cellWeights, gapLimit, usualStep } from "../stats/time-weights.ts";
import type { GrowthLimits } from "./culture.ts";
import { cardinalTemperatures, growthRate, relativeRate } from "./growth-rate.ts";

/** A night as it was logged, thermometer-corrected: minutes strictly increasing, degC of the same length. */
export interface GrowthCourse {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  /** The whole night's, contiguous and in order. */
  readonly phases: readonly Phase[];
}

/** What a model makes of a night for one organism; rates are relative to that at its optimum. */
export interface GrowthOverHold {
  readonly organism: string;
  /** Time-weighted mean over the hold, disturbances left out, 0 to 1. */
  readonly meanRate: number;
  /** Hours at the optimum that the hold alone is worth. */
  readonly equivalentHours: number;
  /** The same of warm-up, hold and disturbances together. */
  readonly equivalentHoursInAll: number;
  /**
   * Of the growth there would have been at the hold's mean rate from switch-on
   * to the hold's end, the share that warm-up cost. Below 0 where it gained; null
   * where none was logged, or nothing grows in the hold.
   */
  readonly lostToWarmUp: number | null;
  /** The same for the disturbances; 0 where there were none. */
  readonly lostToDisturbances: number | null;
}

/**
 * Growth over a night by the cardinal temperature model (see growth-rate.ts):
 * the rate of every reading, weighted with the time it stands for, phase by
 * phase. Time that no reading covers counts for nothing on either side.
 *
 * An estimate of a model for an organism at its best, without lag, souring or
 * crowding, from limits of which strains differ by several degrees; it compares
 * nights and is no claim about safety. Linear in the readings. null where the
 * organism's limits are not known or do not fit the model, or where there is no
 * hold. Smallest sample: one reading in the hold.
 */
export const growthOverHold = (
  course: GrowthCourse,
  limits: GrowthLimits,
): GrowthOverHold | null => {
  const cardinal = cardinalTemperatures(limits);
  if (cardinal === null) return null;
  const rates = course.celsius.map((celsius) => relativeRate(cardinal, celsius));
  const sums = sumByKind(course, rates);
  const { hold, "warm-up": warmUp, disturbance } = sums;
  if (hold.minutes === 0) return null;
  const meanRate = hold.growth / hold.minutes;
  const grown = hold.growth + warmUp.growth + disturbance.growth;
  const possible = meanRate * (hold.minutes + warmUp.minutes + disturbance.minutes);
  const lost = ({ minutes, growth }: Sum): number | null =>
    possible === 0 ? null : (meanRate * minutes - growth) / possible;
  return {
    organism: limits.organism,
    meanRate,
    equivalentHours: hold.growth / 60,
    equivalentHoursInAll: grown / 60,
    lostToWarmUp: warmUp.minutes === 0 ? null : lost(warmUp),
    lostToDisturbances: lost(disturbance),
  };
};

/**
 * Hours at the optimum that `hours` at one temperature are worth, by the same
 * model and no surer; null where the organism's limits do not allow it.
 */
export const equivalentHours = (
  limits: GrowthLimits,
  celsius: number,
  hours: number,
): number | null => {
  const rate = growthRate(limits, celsius);
  return rate === null ? null : rate * hours;
};

/** Minutes covered by readings, and minutes at the optimum they are worth. */
interface Sum {
  minutes: number;
  growth: number;
}

const none = (): Sum => ({ minutes: 0, growth: 0 });

const sumByKind = (
  { minutes, phases }: GrowthCourse,
  rates: Float64Array,
): Readonly<Record<PhaseKind, Sum>> => {
  const sums = {
    idle: none(),
    "warm-up": none(),
    hold: none(),
    disturbance: none(),
    "cool-down": none(),
  };
  const limit = gapLimit(usualStep(minutes));
  let first = 0;
  for (const { kind, fromMinute, toMinute } of phases) {
    while (first < minutes.length && minutes[first]! < fromMinute) first += 1;
    let last = first;
    while (last < minutes.length && minutes[last]! <= toMinute) last += 1;
    const stretch = { from: fromMinute, to: toMinute };
    const weights = cellWeights(minutes, first, last, stretch, limit);
    weights.forEach((weight, index) => {
      sums[kind].minutes += weight;
      sums[kind].growth += weight * rates[first + index]!;
    });
    // A reading on a border has half its time in either phase.
    if (last > first) first = last - 1;
  }
  return sums;
};
