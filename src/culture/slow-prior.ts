import type { SlowStrengths } from "./slow-change.ts";

/** What bears on how strongly the room and the appliance move the food. */
export interface SlowEvidence {
  /** Whether a thermostat is known to be at work; null where nobody knows. */
  readonly thermostat?: boolean | null;
  /** A regular cycle was seen: something switches by temperature. */
  readonly cycling: boolean;
  /** Range of the room's temperature over a day, degC; null where nobody said. */
  readonly roomRange: number | null;
  /** From switch-on to the hold; null where the warm-up was not seen. */
  readonly warmUpMinutes: number | null;
}

export interface WeightedStrengths {
  readonly strengths: SlowStrengths;
  /** Prior weight; the weights sum to 1. */
  readonly weight: number;
}

/**
 * How much of the room's movement reaches the food: thermostats let little
 * through, a heater of fixed power nearly all. Which of them it is, the person
 * may know; a cycle seen speaks for a thermostat. So does a brisk warm-up, for fixed power creeps up to its level
 * for hours; a slow one says nothing certain, since jars are slow as well.
 */
const passed = [0.015, 0.04, 0.1, 0.25, 0.5, 0.9];
const passedWeights = {
  cycling: [0.3, 0.3, 0.24, 0.11, 0.03, 0.02],
  brisk: [0.32, 0.28, 0.2, 0.12, 0.05, 0.03],
  none: [0.01, 0.02, 0.04, 0.13, 0.3, 0.5],
  creeping: [0.07, 0.1, 0.13, 0.17, 0.2, 0.33],
};
/** A warm-up up to here is brisk, from there on creeping, in between in proportion; minutes. */
const briskWarmUp = 150;
const creepingWarmUp = 360;
/** Where no warm-up was seen: half of one, half of the other. */
const unseenWarmUp = 0.5;

const weightsFor = ({
  thermostat = null,
  cycling,
  warmUpMinutes,
}: SlowEvidence): readonly number[] => {
  if (thermostat === false) return passedWeights.none;
  if (cycling || thermostat === true) return passedWeights.cycling;
  const slowness =
    warmUpMinutes === null
      ? unseenWarmUp
      : Math.min(1, Math.max(0, (warmUpMinutes - briskWarmUp) / (creepingWarmUp - briskWarmUp)));
  return passedWeights.brisk.map(
    (weight, index) => (1 - slowness) * weight + slowness * passedWeights.creeping[index]!,
  );
};

/** How much of the room's movement is thought to reach the food before its readings are looked at, as degC per degC. */
export const roomPassed = (
  evidence: SlowEvidence,
): { readonly mean: number; readonly standardDeviation: number } => {
  const weights = weightsFor(evidence);
  const mean = passed.reduce((sum, share, index) => sum + weights[index]! * share, 0);
  const variance = passed.reduce(
    (sum, share, index) => sum + weights[index]! * (share - mean) ** 2,
    0,
  );
  return { mean, standardDeviation: Math.sqrt(variance) };
};

/** Lowest to highest of a kitchen's temperature over a day and night where nobody said (common practice, no source). */
export const usualRoomRange = 4;
const ownWanders = [
  { wander: 0.03, weight: 0.7 },
  { wander: 0.15, weight: 0.3 },
];
/** What may be left of the approach where the hold begins, degC, and its time constant, hours. */
const approaches = [
  { rest: 0.05, hours: 1, weight: 0.4 },
  { rest: 0.5, hours: 1, weight: 0.2 },
  { rest: 0.5, hours: 3, weight: 0.2 },
  { rest: 2.5, hours: 1.5, weight: 0.1 },
  { rest: 2.5, hours: 4, weight: 0.1 },
];

/**
 * The prior over the strengths of the slow part: this project's assumptions,
 * stated here and in the report. A wave of standard deviation s has a range of
 * 2 sqrt(2) s; the room's wander is given a third of the wave's strength.
 */
export const slowPrior = (evidence: SlowEvidence): readonly WeightedStrengths[] => {
  const daily = (evidence.roomRange ?? usualRoomRange) / (2 * Math.SQRT2);
  const weights = weightsFor(evidence);
  return passed.flatMap((share, index) =>
    ownWanders.flatMap(({ wander, weight: wanderWeight }) =>
      approaches.map(({ rest, hours: approachHours, weight: restWeight }) => ({
        strengths: {
          daily: share * daily,
          roomWander: (share * daily) / 3,
          ownWander: wander,
          approach: rest,
          approachHours,
        },
        weight: weights[index]! * wanderWeight * restWeight,
      })),
    ),
  );
};
