import type { Points } from "./grid.ts";
import type { PhaseCause } from "./hold.ts";
import { expectedAt } from "./level.ts";
import type { Level } from "./level.ts";
import { offsetAt } from "./fall-shape.ts";

/** Falls slower than this are water cooling, not air or an open lid, minutes to the lowest point. */
const slowFall = 15;
/** A fall over more than this share of the way to the room is the probe itself in the air. */
const deepFall = 0.3;

/**
 * What most likely lies behind a disturbance, from its shape: a long fall is
 * water cooling without heat, a quick one air: deep when the probe hangs in
 * it, shallow when only the lid is off. Common sense, no source.
 *
 * @param room lowest temperature of the log, degC, the nearest there is to the room's
 */
export const disturbanceCause = (
  points: Points,
  level: Level,
  first: number,
  last: number,
  room: number,
): PhaseCause => {
  let lowest = first;
  for (let index = first; index <= last; index += 1) {
    if (points.celsius[index]! < points.celsius[lowest]!) lowest = index;
  }
  const onset = points.minutes[first]!;
  if (points.minutes[lowest]! - onset >= slowFall) return "power-cut";
  const way = expectedAt(level, onset) - room;
  return -offsetAt(points, level, lowest) > deepFall * way ? "probe-out" : "lid-lifted";
};
