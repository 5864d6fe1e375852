import { disturbanceCause } from "./disturbance-cause.ts";
import type { Disturbance } from "./disturbance.ts";
import { leaving, returned } from "./event-borders.ts";
import { findExcursions } from "./excursions.ts";
import type { Excursion } from "./excursions.ts";
import { goesOnFalling, hasFallen, isRecovering, isSteep } from "./fall-shape.ts";
import type { Points } from "./grid.ts";
import { findBursts } from "./bursts.ts";
import type { Level } from "./level.ts";

/** Least depth below the ordinary lowest that counts, degC. */
const leastDepth = 0.3;
/** A dip not yet over when the log ends has to be deeper, degC: it has not shown that it is one. */
const leastUnfinished = 0.9;
/** A coarse logger's single step down, in steps, is no fall. */
const moreThanOneStep = 1.2;
/** Excursions nearer to each other than this are one, minutes: dip and the overshoot after it. */
const sameEvent = 20;
/** Fewer points than this are a stray reading, not an event. */
const fewestPoints = 3;
/** A slower fall than this is drift, not cooling, degC per hour; with a recovery after it half as much. */
const slowestCooling = 0.7;
const slowestSag = 0.35;

/**
 * How far below the ordinary lowest a reading must lie: more than cycles and
 * noise vary by, and a third of the swing, because one deep cycle of a coarse
 * thermostat is no disturbance.
 */
const disturbanceDepth = (level: Level, resolution: number): number => {
  const spread = level.high - level.low;
  // A disturbed block or two make the extremes vary; that must not hide the disturbance.
  const varied = Math.min(3 * level.variation, leastDepth + spread / 2);
  return Math.max(leastDepth, varied, spread / 3, moreThanOneStep * resolution);
};

/**
 * Disturbances among the points `from` .. `to`: runs that fall, at cooling
 * speed, below the ordinary lowest of the hold by more than the depth above,
 * widened backwards to where they left the level and forwards to where they
 * are back near the hold's spread, reheating's overshoot included. Heat alone
 * (an excursion above only) is no disturbance, for the food felt it, but for
 * bursts that no water could follow (bursts.ts).
 *
 * @param room lowest temperature of the log, degC
 */
export const findDisturbances = (
  points: Points,
  level: Level,
  from: number,
  to: number,
  room: number,
): Disturbance[] => {
  const depth = disturbanceDepth(level, points.resolution);
  const found = findExcursions(points, level, level.low - depth, level.high + depth, from, to);
  const inner = joined(points, found).filter(
    (event) =>
      event.below > 0 &&
      event.last < to &&
      event.last - event.first + 1 >= fewestPoints &&
      hasFallen(points, level, event, depth),
  );
  const outer = joined(points, withLastFall(points, level, from, to, found)).filter(
    (event) => event.below > 0 && event.last === to && hasFallen(points, level, event, leastDepth),
  );
  const falls = [...inner, ...outer]
    .filter((event) => event.below >= leastUnfinished || !isUnfinished(points, level, event, to))
    .map((event) => described(points, level, event, from, to, room))
    .filter((event) => isCooling(points, level, event));
  return withBursts(falls, findBursts(points, level, from, to));
};

/** Both in order; a burst that touches a fall belongs to it. */
const withBursts = (
  falls: readonly Disturbance[],
  bursts: readonly Disturbance[],
): Disturbance[] => {
  const apart = bursts.filter((burst) =>
    falls.every(({ first, last }) => burst.last < first - 1 || burst.first > last + 1),
  );
  return [...falls, ...apart].toSorted((a, b) => a.first - b.first);
};

/** The fall is as fast as cooling is, from where it left the hold or from where it is clear of it. */
const isCooling = (points: Points, level: Level, event: Disturbance): boolean => {
  const { first, last, clear, final } = event;
  const least = final ? slowestCooling : slowestSag;
  const steep = isSteep(points, level, first, least) || isSteep(points, level, clear, least);
  return steep && (!final || goesOnFalling(points, clear, last));
};

/** The last run below the ordinary lowest, which counts at a smaller depth than a dip: it never returns. */
const withLastFall = (
  points: Points,
  level: Level,
  from: number,
  to: number,
  found: readonly Excursion[],
): Excursion[] => {
  const low = level.low - Math.max(leastDepth, Math.min(3 * level.variation, leastDepth * 2));
  const last = findExcursions(points, level, low, Infinity, from, to).at(-1);
  if (last === undefined || last.last !== to) return [...found];
  return [...found.filter((event) => event.last < last.first), last];
};

/** A dip joined with what follows shortly after; heat before a dip stays outside the event. */
const joined = (points: Points, excursions: readonly Excursion[]): Excursion[] => {
  const events: Excursion[] = [];
  for (const next of excursions) {
    const last = events.at(-1);
    const near =
      last !== undefined && points.minutes[next.first]! - points.minutes[last.last]! <= sameEvent;
    if (last === undefined || !near || last.below === 0) {
      events.push(next);
      continue;
    }
    const below = Math.max(last.below, next.below);
    const above = Math.max(last.above, next.above);
    events[events.length - 1] = { first: last.first, last: next.last, below, above };
  }
  return events;
};

const isUnfinished = (points: Points, level: Level, event: Excursion, to: number): boolean =>
  event.last === to && isRecovering(points, level, event);

const described = (
  points: Points,
  level: Level,
  event: Excursion,
  from: number,
  to: number,
  room: number,
): Disturbance => {
  const first = leaving(points, level, event, from);
  const ended = event.last === to;
  const final = ended && !isRecovering(points, level, event);
  const last = ended ? to : returned(points, level, event.last, to);
  return {
    first,
    last,
    final,
    clear: event.first,
    cause: disturbanceCause(points, level, first, last, room),
  };
};
