import { median } from "../stats/median.ts";
import { fitDeparture } from "./departure.ts";
import type { Disturbance } from "./disturbance.ts";
import { offsetAt } from "./fall-shape.ts";
import type { Points } from "./grid.ts";
import { expectedAt } from "./level.ts";
import type { Level } from "./level.ts";

export interface HoldEnd {
  readonly minute: number;
  readonly cause: "switched-off" | "probe-out";
}

/** How far before and after the visible fall the onset fit looks, minutes. */
const lookBack = 120;
const lookAhead = 180;
/** With less movement than this there is no swing to speak of, degC. */
const calmWithin = 0.5;
/** Fewer readings than this do not show where the hold stood before the fall. */
const fewestBefore = 6;
/** Water does not cool with a shorter time constant than this, a probe in air does, minutes. */
const fastestWater = 15;

/**
 * End of the hold from the fall that runs to the end of the log: onset by
 * fitting the response of two lags (see departure.ts) to the readings around
 * it, never later than the first point clearly below the hold, never before
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
  const clear = minutes[fall.clear]!;
  const before = fall.first > 0 ? minutes[fall.first - 1]! : left;
  const from = Math.max(notBefore, left - lookBack);
  // Without a swing the fit may look for the onset up to where the fall is clear; a swing would mislead it.
  const calm = level.high - level.low < calmWithin;
  const latest = calm ? clear : left;
  const high = calm ? heightBefore(points, level, from, left) : 0;
  const fit = fitDeparture(
    points,
    (minute) => expectedAt(level, minute) + high,
    { from, to: left + lookAhead },
    { from, to: Math.max(from, latest) },
  );
  const quiet = fit !== null && fit.amplitude < 0 && before > from;
  const minute = Math.max(notBefore, quiet ? Math.min(latest, fit.onset) : before);
  const lag = fit === null ? Infinity : fit.lag;
  return { minute, cause: lag < fastestWater ? "probe-out" : "switched-off" };
};

/** How far from the level the readings stood on the whole before the fall, degC: a drift leaves a straight level. */
const heightBefore = (points: Points, level: Level, from: number, left: number): number => {
  const offsets: number[] = [];
  points.minutes.forEach((minute, index) => {
    if (minute >= from && minute < left) offsets.push(offsetAt(points, level, index));
  });
  return offsets.length < fewestBefore ? 0 : median(offsets);
};
