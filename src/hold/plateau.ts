import { blocksOf, flat } from "./blocks.ts";
import { evenSeries } from "./even-grid.ts";
import { indexFrom } from "./grid.ts";
import type { Points } from "./grid.ts";
import { levelAt } from "./level.ts";
import type { Level } from "./level.ts";
import { findSwing } from "./swing.ts";
import type { Stretch } from "../stats/time-weights.ts";

/** A warmer without a thermostat takes longer than this, minutes of time constant; */
const quickApproach = 45;
/** and with a longer one than this an approach and a drift cannot be told apart, */
const slowestApproach = 90;
/** unless this many time constants of it were seen. */
const seenThrough = 6;
/** A kept level moves less than this over the hold, degC. */
const mostMovement = 0.5;
/** The same for the medians of the later hours, degC, which hold the tail of the approach as well; */
const mostWander = 0.5;
/** and this much is no thermostat's doing however quick the rise was. */
const clearWander = 1.5;
/** An exponential takes ln 5 time constants from half of the rise to nine tenths of it. */
const halfToNineTenths = Math.log(5);
/** A smaller rise shows no pace, degC. */
const leastRise = 2;

/** The stretch of the later readings and what they are like (own-range.ts). */
export interface Later extends Stretch {
  readonly level: Level;
  /** Points to leave out. */
  readonly disturbed: Uint8Array;
}

/**
 * Whether a hold has a level of its own: reached quickly, as a thermostat
 * does, or standing still or swinging regularly in the later half. A warmer at
 * fixed power heads for its level over hours and then follows the room.
 */
export const hasPlateau = (points: Points, hold: Stretch, level: Level, later: Later): boolean => {
  const { approach } = level;
  if (approach !== null) {
    if (approach.timeConstant <= quickApproach) return true;
    const seen = (hold.to - approach.from) / approach.timeConstant;
    if (approach.timeConstant > slowestApproach && seen < seenThrough) return false;
    return movement(level, hold) < mostMovement;
  }
  const moved = wander(points, later);
  if (moved < mostWander) return true;
  const quick = risePace(points, later) <= quickApproach;
  return (quick && moved < clearWander) || isSwinging(points, hold);
};

/** Highest less lowest of the level over the hold, degC. */
const movement = (level: Level, { from, to }: Stretch): number => {
  const heights = Array.from({ length: 13 }, (_, k) =>
    levelAt(level, from + (k / 12) * (to - from)),
  );
  return Math.max(...heights) - Math.min(...heights);
};

/** Highest less lowest of the medians of the later hours, degC. */
const wander = (points: Points, later: Later): number => {
  const picked: number[] = [];
  const to = indexFrom(points.minutes, later.to);
  for (let index = indexFrom(points.minutes, later.from); index <= to; index += 1)
    if (later.disturbed[index] === 0) picked.push(index);
  const hours = Math.max(2, Math.floor((later.to - later.from) / 60));
  const middles = blocksOf(points, picked, later, hours, flat).map(({ middle }) => middle);
  return Math.max(...middles) - Math.min(...middles);
};

/** Time constant an exponential of the rise's pace would have, minutes; infinite where the log has no rise. */
const risePace = ({ minutes, celsius }: Points, { from, level }: Later): number => {
  let lowest = 0;
  for (let index = 0; index < minutes.length && minutes[index]! <= from; index += 1)
    if (celsius[index]! < celsius[lowest]!) lowest = index;
  const rise = level.intercept - celsius[lowest]!;
  if (rise < leastRise) return Infinity;
  const reached = (share: number): number => {
    const height = celsius[lowest]! + share * rise;
    let index = lowest;
    while (index < minutes.length - 1 && celsius[index]! < height) index += 1;
    return minutes[index]!;
  };
  return (reached(0.9) - reached(0.5)) / halfToNineTenths;
};

const isSwinging = ({ minutes, celsius }: Points, hold: Stretch): boolean => {
  const [from, to] = [indexFrom(minutes, hold.from), indexFrom(minutes, hold.to) + 1];
  const held = { minutes: minutes.subarray(from, to), celsius: celsius.subarray(from, to) };
  return findSwing(evenSeries(held)) !== null;
};
