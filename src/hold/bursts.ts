import type { Disturbance } from "./disturbance.ts";
import { findExcursions } from "./excursions.ts";
import type { Points } from "./grid.ts";
import type { Level } from "./level.ts";

/** Least distance from the hold's spread, degC. */
const leastHeight = 3;
/** A longer one is the appliance's doing, minutes. */
const longest = 60;
/** Water in a vessel neither warms nor cools as fast as this, degC per minute. */
const fasterThanWater = 0.5;
/** Within this much of the spread is back, degC. */
const near = 0.5;

/**
 * Bursts among the points `from` .. `to` that the probe felt and the food did
 * not: steam, a warm hand, a moment in the air, a stray reading. They leave the
 * hold and come back again faster than water can; an overshoot comes down
 * slowly. The figures are common sense (a litre-sized vessel 20 degC above its
 * room cools by less than 0.3 degC a minute), no source.
 */
export const findBursts = (points: Points, level: Level, from: number, to: number): Disturbance[] =>
  findExcursions(points, level, level.low - near, level.high + near, from, to)
    .filter(({ above, below }) => Math.max(above, below) >= leastHeight)
    .filter(({ first, last }) => first > from && last < to)
    .filter(({ first, last, above, below }) => isBurst(points, first, last, above > below ? 1 : -1))
    .map(({ first, last }) => ({
      first,
      last: comeBack(points, first, last, to),
      clear: first,
      final: false,
    }));

/** Last point before the readings are back where they left, undershoot included; `last` where that takes too long. */
const comeBack = ({ minutes, celsius }: Points, first: number, last: number, to: number) => {
  const left = celsius[first - 1]!;
  for (let index = last + 1; index <= to; index += 1) {
    if (minutes[index]! - minutes[first]! > longest) break;
    if (Math.abs(celsius[index]! - left) <= near) return index - 1;
  }
  return last;
};

const isBurst = (
  { minutes, celsius }: Points,
  first: number,
  last: number,
  sign: 1 | -1,
): boolean => {
  const [before, after] = [first - 1, last + 1];
  if (minutes[after]! - minutes[before]! > longest) return false;
  let top = first;
  for (let index = first; index <= last; index += 1)
    if (sign * celsius[index]! > sign * celsius[top]!) top = index;
  const away = (sign * (celsius[top]! - celsius[before]!)) / (minutes[top]! - minutes[before]!);
  const back = (sign * (celsius[top]! - celsius[after]!)) / (minutes[after]! - minutes[top]!);
  return away >= fasterThanWater && back >= fasterThanWater;
};
