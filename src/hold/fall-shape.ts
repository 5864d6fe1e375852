import type { Excursion } from "./excursions.ts";
import type { Points } from "./grid.ts";
import { expectedAt } from "./level.ts";
import type { Level } from "./level.ts";

/** Reading less what the hold would show, degC. */
export const offsetAt = (points: Points, level: Level, index: number): number =>
  points.celsius[index]! - expectedAt(level, points.minutes[index]!);

/** How long before an event the readings must have stood higher, minutes. */
const fallWithin = 180;

/**
 * The readings came down to the event's lowest, by nearly `depth` and the
 * ordinary movement together, which the tail of an approach has not; and they
 * came from the hold's ordinary height: a controller that swings under after a
 * larger overshoot is still settling.
 */
export const hasFallen = (
  points: Points,
  level: Level,
  event: Excursion,
  depth: number,
): boolean => {
  const { minutes, celsius } = points;
  let lowest = Infinity;
  for (let index = event.first; index <= event.last; index += 1) {
    lowest = Math.min(lowest, celsius[index]!);
  }
  let highest = -Infinity;
  let above = -Infinity;
  // Before its first minute an approach's curve says nothing.
  const earliest = Math.max(minutes[event.first]! - fallWithin, level.approach?.from ?? 0);
  for (let index = event.first; index >= 0 && minutes[index]! >= earliest; index -= 1) {
    highest = Math.max(highest, celsius[index]!);
    above = Math.max(above, offsetAt(points, level, index));
  }
  const overshoot = above - level.high;
  const ringing = overshoot > depth && overshoot > event.below;
  return highest - lowest >= 0.8 * (depth + level.high - level.low) && !ringing;
};

/** Less than this within the hour may be wander on a drift, degC, or this many standard deviations noise. */
const leastFall = 0.3;
const clearOfNoise = 6;

/**
 * Whether the fall from point `first` to the lowest of the hour after it went
 * by at least `least` degC per hour (and by more than noise): slower is
 * drift, not cooling.
 */
export const isSteep = (points: Points, level: Level, first: number, least: number): boolean => {
  const { minutes, celsius } = points;
  const start = Math.max(0, first - 1);
  const height = meanBefore(points, start);
  let lowest = start;
  for (let index = start; index < minutes.length; index += 1) {
    if (minutes[index]! > minutes[first]! + 60) break;
    if (celsius[index]! < celsius[lowest]!) lowest = index;
  }
  const hours = (minutes[lowest]! - minutes[start]!) / 60;
  const fall = height - celsius[lowest]!;
  const clear = Math.max(leastFall, clearOfNoise * level.noise);
  return hours > 0 && fall >= clear && fall / hours >= least;
};

/** A fall this slow over two hours is the room's, degC per hour. */
const roomFall = 0.5;
const longFall = 120;

/** Whether a fall that has gone on for two hours is still faster than what follows a room through the night. */
export const goesOnFalling = (points: Points, first: number, last: number): boolean => {
  const { minutes } = points;
  const start = Math.max(0, first - 1);
  let later = start;
  while (later < last && minutes[later]! < minutes[start]! + longFall) later += 1;
  const hours = (minutes[later]! - minutes[start]!) / 60;
  if (hours < longFall / 60) return true;
  return meanBefore(points, start) - meanBefore(points, later) >= roomFall * hours;
};

/** Mean of the five minutes up to a point. */
const meanBefore = ({ minutes, celsius }: Points, at: number): number => {
  let sum = 0;
  let count = 0;
  for (let index = at; index >= 0 && minutes[index]! >= minutes[at]! - 5; index -= 1) {
    sum += celsius[index]!;
    count += 1;
  }
  return sum / count;
};

/** Share of a fall that must be made good for it to be a recovery under way. */
const madeGood = 0.3;

/** Heating came back before the log ended: the readings climbed well off their lowest. */
export const isRecovering = (points: Points, level: Level, event: Excursion): boolean => {
  let lowest = 0;
  for (let index = event.first; index <= event.last; index += 1) {
    lowest = Math.min(lowest, offsetAt(points, level, index));
  }
  return offsetAt(points, level, event.last) - lowest > madeGood * -lowest;
};
