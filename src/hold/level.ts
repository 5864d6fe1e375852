import { approachedLevel, missingAt } from "./approach.ts";
import type { Approach } from "./approach.ts";

/**
 * What the hold looks like: a straight level and the envelope of its ordinary
 * movement (thermostat cycles, noise) around it.
 */
export interface Level {
  /** degC at minute 0 of the log, and degC per minute. */
  readonly intercept: number;
  readonly slope: number;
  /** The exponential approach to the level where there is one; then its curved level takes the line's place. */
  readonly approach: Approach | null;
  /** Ordinary lowest and highest departure from the level, degC (low <= 0 <= high as a rule). */
  readonly low: number;
  readonly high: number;
  /** Standard deviation of the noise in those extremes, degC. */
  readonly noise: number;
  /** How much those extremes vary from block to block, degC (robust standard deviation). */
  readonly variation: number;
}

/** The settled level, degC at a minute of the log. */
export const levelAt = (level: Level, minute: number): number =>
  level.approach === null
    ? level.intercept + level.slope * minute
    : approachedLevel(level.approach, minute);

/** What the appliance is expected to show, degC: the level less what is missing of an approach. */
export const expectedAt = (level: Level, minute: number): number =>
  level.approach === null
    ? levelAt(level, minute)
    : levelAt(level, minute) - missingAt(level.approach, minute);

/** Slope of the level at its steepest end between two minutes, degC per minute. */
export const steepestSlope = (level: Level, from: number, to: number): number => {
  if (level.approach === null) return Math.abs(level.slope);
  const { approach } = level;
  const at = (minute: number): number =>
    Math.abs(approach.slope + 2 * approach.bend * (minute - approach.from));
  return Math.max(at(from), at(to));
};
