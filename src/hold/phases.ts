import { dequantised } from "./dequantise.ts";
import { evenSeries } from "./even-grid.ts";
import { extremes } from "./extremes.ts";
import { findHeatingStart } from "./heating-start.ts";
import { findHold } from "./find-hold.ts";
import type { FoundHold } from "./find-hold.ts";
import type { Points } from "./grid.ts";
import type { Phase } from "./hold.ts";
import { settledHalfWidth } from "./hold-start.ts";
import { levelAt } from "./level.ts";
import { findSwing } from "./swing.ts";

export interface FoundPhases {
  readonly phases: readonly Phase[];
  /** Start of heating, minutes; null where the log has no rise. */
  readonly heatingStart: number | null;
  readonly hold: FoundHold | null;
}

/** A log whose temperatures differ by less than this was never heated or cooled much, degC. */
const leastRise = 3;
/** A level no warmer than this may be a room's, degC. */
const warmestRoom = 25;
/** A rise by this much within an hour is heating even at a room's temperatures, degC. */
const heatingRise = 1.2;
/** Without a hold, less movement than this is neither warm-up nor cool-down, degC. */
const leastMove = 1;
/** A swing of this height is a thermostat's even at a room's temperatures, degC. */
const thermostatSwing = 0.2;
/** The hold lies above this share of the way from the coldest to the warmest reading. */
const floorShare = 0.4;

/**
 * The phases of a water test, contiguous and in order.
 *
 * Up to 25 degC a level is a hold only with a sign of heating: a rise of 3 degC,
 * one of 1.2 degC within an hour, or a thermostat's regular swing. A flat log at
 * 21 degC looks the same whether a water bath keeps it or the appliance was
 * never switched on, and saying "idle" is the answer that can be checked (start
 * the log before switching on). These figures are common sense, no source.
 */
export const findPhases = (raw: Points): FoundPhases => {
  const points = { ...raw, celsius: dequantised(raw.celsius, raw.resolution) };
  const [coldest, warmest] = extremes(points);
  const structured = warmest - coldest >= leastRise;
  if (!structured && warmest <= warmestRoom && !isHeated(points)) {
    return nothingButIdle(points);
  }
  const floor = structured ? coldest + floorShare * (warmest - coldest) : coldest;
  const hold = findHold(points, floor, coldest);
  return hold === null ? withoutHold(points, coldest, warmest) : withHold(points, hold);
};

const nothingButIdle = ({ minutes }: Points): FoundPhases => {
  const toMinute = minutes[minutes.length - 1]!;
  return {
    phases: [{ kind: "idle", fromMinute: minutes[0]!, toMinute }],
    heatingStart: null,
    hold: null,
  };
};

const isHeated = (points: Points): boolean => {
  const { minutes, celsius } = points;
  let hourAgo = 0;
  let lowest = 0;
  for (let index = 0; index < minutes.length; index += 1) {
    while (minutes[hourAgo]! < minutes[index]! - 60) hourAgo += 1;
    lowest = Math.max(lowest, hourAgo);
    if (celsius[index]! < celsius[lowest]!) lowest = index;
    if (celsius[index]! - celsius[lowest]! >= heatingRise) return true;
  }
  const swing = findSwing(evenSeries(points));
  return swing !== null && swing.peakToPeak >= thermostatSwing;
};

const withHold = (points: Points, hold: FoundHold): FoundPhases => {
  const { minutes } = points;
  const start = minutes[0]!;
  const phases: Phase[] = [];
  let heatingStart: number | null = null;
  if (hold.from > start) {
    let until = 0;
    const limit = hold.level.low - settledHalfWidth(hold.level);
    while (until < minutes.length - 1 && minutes[until]! < hold.from) {
      if (points.celsius[until]! - levelAt(hold.level, minutes[until]!) >= limit) break;
      until += 1;
    }
    heatingStart = Math.min(findHeatingStart(points, hold.level, until), hold.from);
    if (heatingStart > start)
      phases.push({ kind: "idle", fromMinute: start, toMinute: heatingStart });
    phases.push({ kind: "warm-up", fromMinute: heatingStart, toMinute: hold.from });
  }
  phases.push(...holdPhases(points, hold));
  const end = minutes[minutes.length - 1]!;
  if (hold.end !== null)
    phases.push({ kind: "cool-down", cause: hold.end.cause, fromMinute: hold.to, toMinute: end });
  return { phases, heatingStart, hold };
};

/** Hold and disturbances in turn. */
const holdPhases = (points: Points, hold: FoundHold): Phase[] => {
  const phases: Phase[] = [];
  let from = hold.from;
  for (const { first, last, cause } of hold.disturbances) {
    const onset = Math.max(from, points.minutes[Math.max(0, first - 1)]!);
    const back = points.minutes[Math.min(points.minutes.length - 1, last + 1)]!;
    if (onset > from) phases.push({ kind: "hold", fromMinute: from, toMinute: onset });
    const kind = { kind: "disturbance" as const, ...(cause === undefined ? {} : { cause }) };
    phases.push({ ...kind, fromMinute: onset, toMinute: back });
    from = back;
  }
  if (hold.to > from) phases.push({ kind: "hold", fromMinute: from, toMinute: hold.to });
  return phases;
};

/** No hold: what rises is warm-up, what falls after the warmest reading is cool-down. */
const withoutHold = (points: Points, coldest: number, warmest: number): FoundPhases => {
  const { minutes, celsius } = points;
  const last = minutes.length - 1;
  if (warmest - coldest < leastMove) return nothingButIdle(points);
  let top = 0;
  celsius.forEach((value, index) => {
    if (value > celsius[top]!) top = index;
  });
  const flat = {
    slope: 0,
    intercept: warmest,
    approach: null,
    noise: 0,
    low: 0,
    high: 0,
    variation: 0,
  };
  const onset = top === 0 ? minutes[0]! : findHeatingStart(points, flat, top);
  const phases: Phase[] = [];
  if (onset > minutes[0]!) phases.push({ kind: "idle", fromMinute: minutes[0]!, toMinute: onset });
  const fell = celsius[last]! < warmest - Math.max(1, 0.1 * (warmest - coldest));
  const peak = fell ? minutes[top]! : minutes[last]!;
  if (peak > onset) phases.push({ kind: "warm-up", fromMinute: onset, toMinute: peak });
  if (fell) phases.push({ kind: "cool-down", fromMinute: peak, toMinute: minutes[last]! });
  return { phases, heatingStart: top === 0 ? null : onset, hold: null };
};
