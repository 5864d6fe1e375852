import { marked, type Disturbance } from "./disturbance.ts";
import { findDisturbances } from "./disturbances.ts";
import type { DraftHold } from "./draft-hold.ts";
import { isSteep } from "./fall-shape.ts";
import { indexFrom } from "./grid.ts";
import type { Points } from "./grid.ts";
import { findHeatingStart } from "./heating-start.ts";
import { shortestHold } from "./hold.ts";
import { firstEntry, ownRange, ownRangeStart, sturdyShare } from "./own-range.ts";
import type { Later } from "./plateau.ts";

/** With the floor no further than this above the coldest, degC, what lies under it may be a warm start cooled to its hold. */
const leastWarmth = 3;
/** Without a level to compare with, only a fall faster than a room cools is the end, degC per hour. */
const fasterThanRooms = 1.2;

/**
 * The hold of a course without a plateau, by the range of its own later
 * readings (own-range.ts): what falls out of that range is sought first, then
 * the range again without it.
 *
 * @param settled what was found by a level, if anything: a clear fall ends this hold as well
 * @param floor the hold lies above this, degC
 * @param room lowest temperature of the log, degC
 * @returns null where the later readings are too few, lie under the floor, or do not stay
 */
export const findUnkeptHold = (
  points: Points,
  settled: DraftHold | null,
  floor: number,
  room: number,
): DraftHold | null => {
  const { minutes } = points;
  const last = minutes.length - 1;
  const fell =
    settled !== null &&
    isSteep(points, settled.level, settled.fall?.first ?? last, fasterThanRooms);
  const until = settled !== null && fell ? indexFrom(points.minutes, settled.to) : last;
  const first = ownRange(points, minutes[0]!, until, marked(points, []), sturdyShare);
  if (first === null || (floor > room + leastWarmth && first.level.intercept < floor)) return null;
  const entry = indexFrom(points.minutes, firstEntry(points, first.level) + shortestHold);
  const events = findDisturbances(points, first.level, entry, last, room);
  const fall = events.find((event) => event.final) ?? null;
  const lastHeld = fall === null ? until : Math.max(0, fall.first - 1);
  const beginning = riseBeginning(points, first);
  const later = ownRange(points, beginning, lastHeld, marked(points, events));
  const start = later === null ? null : ownRangeStart(points, later, lastHeld);
  if (later === null || start === null) return null;
  const from = afterEvent(points, events, start);
  const { level } = later;
  const inside = events.filter((event) => !event.final && points.minutes[event.first]! > from);
  return { level, from, to: points.minutes[lastHeld]!, fall, disturbances: inside };
};

/** The hold cannot begin inside a disturbance: then it begins after it. */
const afterEvent = ({ minutes }: Points, events: readonly Disturbance[], start: number): number => {
  const around = events.find(
    ({ first, last, final }) =>
      !final && minutes[first - 1]! <= start && start <= minutes[last + 1]!,
  );
  return around === undefined ? start : minutes[around.last + 1]!;
};

/** A smaller rise has no beginning that could be told, degC. */
const leastRise = 2;

/** Where the rise to the later readings begins, minutes; the first minute where the log has none. */
const riseBeginning = (points: Points, later: Later): number => {
  const { minutes, celsius } = points;
  const until = indexFrom(minutes, firstEntry(points, later.level));
  const middle = indexFrom(minutes, later.from);
  const lowest = celsius.subarray(0, middle).reduce((low, value) => Math.min(low, value), Infinity);
  if (later.level.intercept - lowest < leastRise) return minutes[0]!;
  return Math.min(findHeatingStart(points, later.level, Math.max(until, 1)), later.from);
};
