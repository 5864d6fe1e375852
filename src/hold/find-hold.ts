import { findCore } from "./core-level.ts";
import { marked } from "./disturbance.ts";
import type { Disturbance } from "./disturbance.ts";
import { findDisturbances } from "./disturbances.ts";
import { isHold, isLong, isRamp } from "./draft-hold.ts";
import type { DraftHold } from "./draft-hold.ts";
import { findLevel } from "./find-level.ts";
import { indexFrom } from "./grid.ts";
import type { Points } from "./grid.ts";
import { findHoldEnd } from "./hold-end.ts";
import type { HoldEnd } from "./hold-end.ts";
import { findHoldStart } from "./hold-start.ts";
import type { Level } from "./level.ts";
import { ownRange } from "./own-range.ts";
import { hasPlateau } from "./plateau.ts";
import type { Later } from "./plateau.ts";
import { settledApproach } from "./settled-approach.ts";
import type { Stretch } from "../stats/time-weights.ts";
import { findUnkeptHold } from "./unkept-hold.ts";

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
 * the hold, what falls out of them, and from that the stretch again. Where
 * that leaves no plateau, the hold is told by its own later range.
 *
 * @param floor the hold lies above this, degC
 * @param room lowest temperature of the log, degC
 * @returns null where nothing settles for `shortestHold`
 */
export const findHold = (points: Points, floor: number, room: number): FoundHold | null => {
  const draft = settle(points, floor, room);
  const settled = draft !== null && isHold(points, draft) ? draft : null;
  const later = settled === null ? null : laterOf(points, settled);
  if (settled !== null && (later === null || hasPlateau(points, settled, settled.level, later)))
    return finished(points, settled);
  const own = findUnkeptHold(points, draft, floor, room);
  const found = own !== null && isLong(points, own) && !isRamp(points, own) ? own : settled;
  return found === null ? null : finished(points, found);
};

/** The later readings of the time up to a draft's end. */
const laterOf = (points: Points, { to, disturbances }: DraftHold): Later | null =>
  ownRange(points, points.minutes[0]!, indexFrom(points.minutes, to), marked(points, disturbances));

const settle = (points: Points, floor: number, room: number): DraftHold | null => {
  const core = findCore(points, floor);
  if (core === null) return null;
  let stretch: Stretch = core;
  let disturbed: Uint8Array = new Uint8Array(points.minutes.length);
  let found: DraftHold | null = null;
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
  return found;
};

/** Borders that move less than this, minutes, have settled. */
const settledMinutes = 1;

const finished = (points: Points, draft: DraftHold): FoundHold => {
  const { level, from, fall, disturbances } = draft;
  const lastOut = disturbances.at(-1)?.last ?? -1;
  const notBefore = Math.max(from, points.minutes[lastOut + 1] ?? from);
  const end = fall === null ? null : findHoldEnd(points, level, fall, notBefore);
  return { level, from, to: end === null ? draft.to : end.minute, end, disturbances };
};

const refine = (points: Points, stretch: Stretch, level: Level, room: number): DraftHold | null => {
  const { minutes } = points;
  const last = minutes.length - 1;
  const arrival = indexFrom(minutes, stretch.from);
  const events = findDisturbances(points, level, arrival, last, room);
  const fall = events.find((event) => event.final) ?? null;
  const lastHeld = fall === null ? last : Math.max(arrival, fall.first - 1);
  const broken = events.filter((event) => !event.final);
  const from = findHoldStart(points, level, 0, lastHeld, marked(points, broken));
  if (from === null) return null;
  const to = minutes[lastHeld]!;
  const inside = broken.filter((event) => minutes[event.first]! > from);
  return { level, from, to, fall, disturbances: inside };
};
