import { medianAbsoluteDeviation, scaledMad } from "../stats/median.ts";
import { theilSen } from "../stats/theil-sen.ts";
import type { Disturbance } from "./disturbance.ts";
import { indexFrom } from "./grid.ts";
import type { Points } from "./grid.ts";
import { fewestHoldReadings, shortestHold } from "./hold.ts";
import { steepestSlope } from "./level.ts";
import type { Level } from "./level.ts";
import { thinned } from "./smooth.ts";
import type { Stretch } from "../stats/time-weights.ts";

/** A hold whose end is not yet sought by the minute. */
export interface DraftHold extends Stretch {
  readonly level: Level;
  /** The fall that ended it; null where the log ends first. */
  readonly fall: Disturbance | null;
  readonly disturbances: readonly Disturbance[];
}

/**
 * A level that moves faster than this is still warming up or cooling, degC per
 * minute: at half a degree an hour any culture's window is crossed in a few hours.
 */
const fastestDrift = 0.5 / 60;

/** Long enough, standing nearly still, and no ramp. */
export const isHold = (points: Points, found: DraftHold): boolean => {
  if (!isLong(points, found) || steepestSlope(found.level, found.from, found.to) > fastestDrift)
    return false;
  return !isRamp(points, found);
};

/** Lasts half an hour with three readings. */
export const isLong = ({ minutes }: Points, { from, to }: Stretch): boolean => {
  const readings = indexFrom(minutes, to) - indexFrom(minutes, from) + 1;
  return to - from >= shortestHold && readings >= fewestHoldReadings;
};

/** The tail of an approach within half a degree of its level is slower than this, degC per minute. */
const slowestRamp = 1 / 60;
/** A change this many times the scatter about the line is a ramp, not a swing cut short. */
const clearTrend = 4;

/** The readings of the stretch go up or down steadily and faster than any drift. */
export const isRamp = (points: Points, { from, to }: Stretch): boolean => {
  const first = indexFrom(points.minutes, from);
  const last = indexFrom(points.minutes, to);
  const times = points.minutes.subarray(first, last + 1);
  const values = points.celsius.subarray(first, last + 1);
  const { slope, intercept } = theilSen(thinned(times), thinned(values));
  if (!(Math.abs(slope) > slowestRamp)) return false;
  const offsets = values.map((value, index) => value - intercept - slope * times[index]!);
  const scatter = scaledMad * medianAbsoluteDeviation(offsets);
  return Math.abs(slope) * (to - from) > clearTrend * scatter;
};
