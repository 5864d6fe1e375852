import { medianAbsoluteDeviation, scaledMad } from "../stats/median.ts";
import { theilSen } from "../stats/theil-sen.ts";
import { findCore } from "./core-level.ts";
import { findDisturbances } from "./disturbances.ts";
import type { Disturbance } from "./disturbances.ts";
import { indexFrom } from "./grid.ts";
import type { Points } from "./grid.ts";
import { fewestHoldReadings, shortestHold } from "./hold.ts";
import { findHoldEnd } from "./hold-end.ts";
import type { HoldEnd } from "./hold-end.ts";
import { findHoldStart } from "./hold-start.ts";
import { findLevel } from "./find-level.ts";
import { steepestSlope } from "./level.ts";
import type { Level } from "./level.ts";
import { settledApproach } from "./settled-approach.ts";
import { thinned } from "./smooth.ts";
import type { Stretch } from "./time-weights.ts";

/** The hold among the working points, before any statistics. */
export interface FoundHold {
  readonly level: Level;
  readonly from: number;
  readonly to: number;
  /** Why it ended; null where the log ends first. */
  readonly end: HoldEnd | null;
  readonly disturbances: readonly Disturbance[];
}

/** Rounds of level, disturbances and borders: each needs the others; it settles in two or three. */
const rounds = 5;

/**
 * Finds the hold by turns: level and envelope of the stretch believed to be
 * the hold, what falls out of them, and from that the stretch again.
 *
 * @param floor the hold lies above this, degC
 * @param room lowest temperature of the log, degC
 * @returns null where nothing settles for `shortestHold`
 */
export const findHold = (points: Points, floor: number, room: number): FoundHold | null => {
  const core = findCore(points, floor);
  if (core === null) return null;
  let stretch: Stretch = core;
  let disturbed: Uint8Array = new Uint8Array(points.minutes.length);
  let found: Draft | null = null;
  for (let round = 0; round < rounds; round += 1) {
    const level = findLevel(points, stretch, disturbed);
    if (level === null) return null;
    const approached = round === 0 ? null : settledApproach(points, stretch, disturbed, level);
    const curved = approached === null ? null : refine(points, stretch, approached, room);
    found =
      curved !== null && isHold(points, curved) ? curved : refine(points, stretch, level, room);
    if (found === null) return null;
    disturbed = marked(points, found.disturbances);
    const moved = Math.abs(found.from - stretch.from) + Math.abs(found.to - stretch.to);
    stretch = found;
    if (moved < settledMinutes) break;
  }
  return found !== null && isHold(points, found) ? finished(points, found) : null;
};

/** Borders that move less than this, minutes, have settled. */
const settledMinutes = 1;

/** A hold whose end is not yet sought by the minute. */
interface Draft extends Stretch {
  readonly level: Level;
  /** The fall that ended it; null where the log ends first. */
  readonly fall: Disturbance | null;
  readonly disturbances: readonly Disturbance[];
}

const finished = (points: Points, draft: Draft): FoundHold => {
  const { level, from, fall, disturbances } = draft;
  const lastOut = disturbances.at(-1)?.last ?? -1;
  const notBefore = Math.max(from, points.minutes[lastOut + 1] ?? from);
  const end = fall === null ? null : findHoldEnd(points, level, fall, notBefore);
  return { level, from, to: end === null ? draft.to : end.minute, end, disturbances };
};

const refine = (points: Points, stretch: Stretch, level: Level, room: number): Draft | null => {
  const { minutes } = points;
  const last = minutes.length - 1;
  const arrival = indexFrom(minutes, stretch.from);
  const events = findDisturbances(points, level, arrival, last, room);
  const fall = events.find((event) => event.final) ?? null;
  const lastHeld = fall === null ? last : Math.max(arrival, fall.first - 1);
  const from = findHoldStart(points, level, 0, lastHeld);
  if (from === null) return null;
  const to = minutes[lastHeld]!;
  const inside = events.filter((event) => !event.final && minutes[event.first]! > from);
  return { level, from, to, fall, disturbances: inside };
};

const marked = (points: Points, disturbances: readonly Disturbance[]): Uint8Array => {
  const flags = new Uint8Array(points.minutes.length);
  for (const { first, last } of disturbances) flags.fill(1, first, last + 1);
  return flags;
};

/**
 * A level that moves faster than this is still warming up or cooling, degC per
 * minute: at half a degree an hour any culture's window is crossed in a few hours.
 */
const fastestDrift = 0.5 / 60;

const isHold = (points: Points, found: Draft): boolean => {
  const inside = points.minutes.filter((minute) => minute >= found.from && minute <= found.to);
  const long = found.to - found.from >= shortestHold && inside.length >= fewestHoldReadings;
  if (!long || steepestSlope(found.level, found.from, found.to) > fastestDrift) return false;
  return !isRamp(points, found);
};

/** The tail of an approach within half a degree of its level is slower than this, degC per minute. */
const slowestRamp = 1 / 60;
/** A change this many times the scatter about the line is a ramp, not a swing cut short. */
const clearTrend = 4;

/** The readings of the stretch go up or down steadily and faster than any drift. */
const isRamp = (points: Points, { from, to }: Stretch): boolean => {
  const first = indexFrom(points.minutes, from);
  const last = indexFrom(points.minutes, to);
  const times = points.minutes.subarray(first, last + 1);
  const values = points.celsius.subarray(first, last + 1);
  const { slope, intercept } = theilSen(thinned(times), thinned(values));
  if (!(Math.abs(slope) > slowestRamp)) return false;
  const offsets = values.map((value, index) => value - intercept - slope * times[index]!);
  const scatter = scaledMad * medianAbsoluteDeviation(offsets);
  return Math.abs(slope) * (to - from) > clearTrend * scatter;
};
