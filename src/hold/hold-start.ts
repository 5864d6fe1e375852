import { arrivalWithin } from "./approach.ts";
import { findExcursions } from "./excursions.ts";
import type { Excursion } from "./excursions.ts";
import type { Points } from "./grid.ts";
import { levelAt } from "./level.ts";
import type { Level } from "./level.ts";
import { smoothedWithin } from "./smooth.ts";

/** Nearer than this to the settled level is settled, degC, however quiet the hold is. */
const settledWithin = 0.5;
/** Reach of the smoothing that keeps noise from carrying readings over the band's edge, minutes. */
const smoothing = 3;
/** Shortest stay that can count as having arrived, minutes. */
const shortestStay = 15;

/** Normal noise spreads the extremes of a hundred values by this many standard deviations either way. */
const noiseReach = 2.5;

/**
 * Half-width of the band a hold has to be reached within, degC: half a degree
 * beyond the hold's own ordinary movement, noise taken out.
 */
export const settledHalfWidth = (level: Level): number =>
  settledWithin + Math.max(0, (level.high - level.low) / 2 - noiseReach * level.noise);

/**
 * Start of the hold, minutes: the first time the readings are within the
 * hold's own spread of its settled level (drift carried back) and stay. An
 * arrival counts when the stay lasts at least half as long again as the
 * excursion that ends it: a sweep through the band on the way to an overshoot does not, and a
 * lid lifted hours later does not send the start behind it. An overshoot no
 * larger than the ordinary swing is inside the band and so part of the hold.
 *
 * @param from first index considered (start of heating)
 * @param to last index of the hold
 * @param disturbed points known to belong to disturbances: these end no stay
 * @returns null when no stay qualifies
 */
export const findHoldStart = (
  raw: Points,
  level: Level,
  from: number,
  to: number,
  disturbed: Uint8Array,
): number | null => {
  const points = smoothedWithin(raw, smoothing);
  const { minutes } = points;
  if (level.approach !== null) {
    const arrival = Math.max(
      minutes[from]!,
      arrivalWithin(level.approach, settledHalfWidth(level)),
    );
    return arrival < minutes[to]! ? arrival : null;
  }
  const middle = (level.low + level.high) / 2;
  const half = settledHalfWidth(level);
  const outside = merged(
    points,
    findExcursions(points, level, middle - half, middle + half, from, to),
  );
  let arrival = from;
  for (const excursion of outside) {
    const stay = excursion.first > arrival ? minutes[excursion.first]! - minutes[arrival]! : 0;
    const broken = disturbed.subarray(excursion.first, excursion.last + 1).includes(1);
    const away = broken ? 0 : minutes[excursion.last]! - minutes[excursion.first]!;
    if (stay >= Math.max(1.5 * away, shortestStay)) break;
    arrival = excursion.last + 1;
    if (arrival > to) return null;
  }
  if (arrival === from) return minutes[from]!;
  return crossing(points, level, middle - half, middle + half, arrival);
};

/** Runs outside with less than `shortestStay` between them, as one: noise at the edge of the band. */
const merged = (points: Points, excursions: readonly Excursion[]): Excursion[] => {
  const runs: Excursion[] = [];
  for (const next of excursions) {
    const last = runs.at(-1);
    const near =
      last !== undefined && points.minutes[next.first]! - points.minutes[last.last]! < shortestStay;
    if (last !== undefined && near) runs[runs.length - 1] = { ...last, last: next.last };
    else runs.push(next);
  }
  return runs;
};

/** Time between points arrival - 1 (outside) and arrival (inside) at which the limit is crossed. */
export const crossing = (
  points: Points,
  level: Level,
  low: number,
  high: number,
  arrival: number,
): number => {
  const { minutes, celsius } = points;
  const before = celsius[arrival - 1]! - levelAt(level, minutes[arrival - 1]!);
  const after = celsius[arrival]! - levelAt(level, minutes[arrival]!);
  const limit = before < low ? low : high;
  const middle = (low + high) / 2;
  const away = Math.abs(before - middle);
  const left = Math.max(Math.abs(after - middle), Math.abs(limit - middle) / 2);
  const near = Math.abs(limit - middle);
  const share = left < near && near < away ? Math.log(away / near) / Math.log(away / left) : 1;
  return minutes[arrival - 1]! + share * (minutes[arrival]! - minutes[arrival - 1]!);
};
