import { fitApproach } from "./approach.ts";
import { indexFrom } from "./grid.ts";
import type { Points } from "./grid.ts";
import { levelOfApproach } from "./find-level.ts";
import { levelAt } from "./level.ts";
import type { Level } from "./level.ts";
import type { Stretch } from "../stats/time-weights.ts";

/**
 * An approach fits when its early part leaves no more than the hold moves
 * anyway, or than this share of the approach: the corner of a thermostat's
 * ramp leaves several times that.
 */
const unexplained = 0.015;
const leastUnexplained = 0.06;
/** What the later part leaves is the measure of what the hold moves anyway. */
const lateFactor = 1.3;
/** Smaller approaches than this do not move the level, degC. */
const leastApproach = 1;
/** With more movement than this around the level a thermostat is at work, and its ramp is no exponential, degC. */
const widestSwing = 0.8;

/** The level an exponential rise is heading for; null where the rise is not one. */
export const settledApproach = (
  points: Points,
  stretch: Stretch,
  disturbed: Uint8Array,
  level: Level,
): Level | null => {
  const from = level.high - level.low > widestSwing ? null : halfRisen(points, level, stretch);
  const approach = from === null ? null : fitApproach(points, { from, to: stretch.to }, disturbed);
  if (approach === null || approach.amplitude < leastApproach) return null;
  const late = Number.isNaN(approach.lateResidual) ? 0 : lateFactor * approach.lateResidual;
  const allowed = Math.max(leastUnexplained, late, unexplained * approach.amplitude);
  return approach.earlyResidual > allowed
    ? null
    : levelOfApproach(points, stretch, disturbed, approach);
};

/** Minute at which half of the rise to the level is done; null where the log has no rise. */
const halfRisen = (points: Points, level: Level, stretch: Stretch): number | null => {
  const { minutes, celsius } = points;
  const until = indexFrom(minutes, stretch.from);
  let lowest = 0;
  for (let index = 0; index <= until; index += 1)
    if (celsius[index]! < celsius[lowest]!) lowest = index;
  const half = (celsius[lowest]! + levelAt(level, minutes[until]!)) / 2;
  let index = lowest;
  while (index < until && celsius[index]! < half) index += 1;
  return celsius[lowest]! < levelAt(level, minutes[until]!) - leastApproach
    ? minutes[index]!
    : null;
};
