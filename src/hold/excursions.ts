import type { Points } from "./grid.ts";
import { expectedAt } from "./level.ts";
import type { Level } from "./level.ts";

/** A run of points outside a band around the level; indices are inclusive. */
export interface Excursion {
  readonly first: number;
  readonly last: number;
  /** Farthest below the lower and above the upper limit, degC, each 0 or more. */
  readonly below: number;
  readonly above: number;
}

/** Runs of points from `from` to `to` (indices, inclusive) that lie outside level + low .. level + high. */
export const findExcursions = (
  points: Points,
  level: Level,
  low: number,
  high: number,
  from: number,
  to: number,
): Excursion[] => {
  const found: Excursion[] = [];
  let first = -1;
  let below = 0;
  let above = 0;
  for (let index = from; index <= to + 1; index += 1) {
    const offset =
      index > to ? 0 : points.celsius[index]! - expectedAt(level, points.minutes[index]!);
    if (index <= to && (offset < low || offset > high)) {
      if (first < 0) first = index;
      below = Math.max(below, low - offset);
      above = Math.max(above, offset - high);
    } else if (first >= 0) {
      found.push({ first, last: index - 1, below, above });
      [first, below, above] = [-1, 0, 0];
    }
  }
  return found;
};
