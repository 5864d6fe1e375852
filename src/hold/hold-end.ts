import { fitDeparture } from "./departure.ts";
import type { Disturbance } from "./disturbances.ts";
import type { Points } from "./grid.ts";
import { levelAt } from "./level.ts";
import type { Level } from "./level.ts";

export interface HoldEnd {
  readonly minute: number;
  readonly cause: "switched-off" | "probe-out";
}

/** How far before and after the visible fall the onset fit looks, minutes. */
const lookBack = 120;
const lookAhead = 180;
/** Water does not cool with a shorter time constant than this, a probe in air does, minutes. */
const fastestWater = 15;

/**
 * End of the hold from the fall that runs to the end of the log: onset by
 * fitting the response of two lags (see departure.ts) to the readings around
 * it, never later than the first point that had left the hold, never before
 * `notBefore` (the hold's start, or the end of its last disturbance).
 */
export const findHoldEnd = (
  points: Points,
  level: Level,
  fall: Disturbance,
  notBefore: number,
): HoldEnd => {
  const { minutes } = points;
  const left = minutes[fall.first]!;
  const before = fall.first > 0 ? minutes[fall.first - 1]! : left;
  const from = Math.max(notBefore, left - lookBack);
  const fit = fitDeparture(
    points,
    (minute) => levelAt(level, minute),
    { from, to: left + lookAhead },
    { from, to: Math.max(from, left) },
  );
  const quiet = fit !== null && fit.amplitude < 0 && before > from;
  const minute = Math.max(notBefore, quiet ? Math.min(left, fit.onset) : before);
  const lag = fit === null ? Infinity : fit.lag;
  return { minute, cause: lag < fastestWater ? "probe-out" : "switched-off" };
};
