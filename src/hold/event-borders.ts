import type { Excursion } from "./excursions.ts";
import { offsetAt } from "./fall-shape.ts";
import type { Points } from "./grid.ts";
import type { Level } from "./level.ts";

/** A fall leaves the hold no longer than this before it is clearly below it, minutes. */
const longestLeaving = 120;
/** Scatter of readings that stand still, degC. */
const standsStill = 0.1;

/**
 * First point of the fall that leads to the event's lowest: the one after the
 * last that stood in the upper three quarters of the hold's spread; or, where
 * all since two hours before the event lay lower (the level is a little too
 * high there), after the last that stood as high as any of them.
 */
export const leaving = (points: Points, level: Level, event: Excursion, from: number): number => {
  const { minutes, celsius } = points;
  let lowest = event.first;
  for (let index = event.first; index <= event.last; index += 1)
    if (celsius[index]! < celsius[lowest]!) lowest = index;
  let highest = -Infinity;
  let earliest = lowest;
  const since = Math.min(minutes[event.first]! - longestLeaving, minutes[event.first - 1] ?? 0);
  while (earliest > from && minutes[earliest - 1]! >= since) {
    earliest -= 1;
    highest = Math.max(highest, offsetAt(points, level, earliest));
  }
  const bound = Math.min(level.low + (level.high - level.low) / 4, highest - standsStill);
  let first = lowest;
  while (first > earliest && offsetAt(points, level, first - 1) < bound) first -= 1;
  return first;
};

/** Back within this much of the hold's spread is back, degC: as near as a hold has to be reached. */
const nearlyBack = 0.5;

/** Last point before the readings are back at the hold's spread. */
export const returned = (points: Points, level: Level, index: number, to: number): number => {
  let last = index;
  while (last < to) {
    const offset = offsetAt(points, level, last + 1);
    if (offset >= level.low - nearlyBack && offset <= level.high + nearlyBack) break;
    last += 1;
  }
  return last;
};
