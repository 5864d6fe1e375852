import { fitDeparture } from "./departure.ts";
import type { Points } from "./grid.ts";
import type { Level } from "./level.ts";
import { levelAt } from "./level.ts";

/** Idle readings move this much at most (room, noise), degC; or this share of the rise. */
const idleWithin = 0.3;
const idleShare = 0.03;
/** A log that idles for less was started with the appliance, minutes. */
const shortestIdle = 5;

/**
 * Start of heating, minutes: the onset of the rise that leads to the hold.
 * Before it lie the lowest readings; the onset is back-extrapolated from the
 * rise (departure.ts), so that a slow jar's flat beginning is not counted as
 * idle. 0 where the log begins with the rise already under way.
 *
 * @param until index of the first point near the hold's level
 */
export const findHeatingStart = (points: Points, level: Level, until: number): number => {
  const { minutes, celsius } = points;
  let lowest = 0;
  for (let index = 0; index <= until; index += 1) {
    if (celsius[index]! < celsius[lowest]!) lowest = index;
  }
  const rise = levelAt(level, minutes[until]!) - celsius[lowest]!;
  const near = celsius[lowest]! + Math.max(idleWithin, idleShare * rise);
  let last = lowest;
  for (let index = lowest; index <= until; index += 1) if (celsius[index]! <= near) last = index;
  if (last === 0) return minutes[0]!;
  let firstIdle = last;
  while (firstIdle > 0 && celsius[firstIdle - 1]! <= near + idleWithin) firstIdle -= 1;
  const onset = onsetOfRise(points, firstIdle, last, until);
  return onset - minutes[0]! < shortestIdle ? minutes[0]! : onset;
};

const onsetOfRise = (points: Points, firstIdle: number, last: number, until: number): number => {
  const { minutes, celsius } = points;
  const idle = celsius.slice(firstIdle, last + 1).toSorted();
  const base = idle[Math.floor(idle.length / 4)]!;
  let half = last;
  while (half < until && celsius[half]! < (base + celsius[until]!) / 2) half += 1;
  const from = minutes[firstIdle]!;
  const fit = fitDeparture(
    points,
    () => base,
    { from, to: minutes[half]! },
    { from, to: minutes[last]! },
  );
  return fit !== null && fit.amplitude > 0 ? fit.onset : minutes[last]!;
};
