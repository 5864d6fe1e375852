/** What a set-up would truly do: many future runs, with rooms and run-to-run shifts of their own. */
import { normalQuantile } from "../../src/stats/normal.ts";
import type { Random } from "./random.ts";
import type { RespondingAppliance } from "./responding-appliance.ts";
import type { RespondingContainer } from "./responding-container.ts";
import { steadyCourse, steadyParts } from "./responding-course.ts";
import { sampleRoomWave, type RoomHabit } from "./responding-room.ts";

/** What a culture asks, as far as the truth needs it. */
export interface Asked {
  readonly low: number;
  readonly high: number;
  readonly ceiling: number | null;
  readonly hours: number;
}

export interface Outlook {
  /** Mean over future runs of the share of the hours inside the window. */
  readonly share: number;
  /** Of future runs: those at least `leastShare` inside, and never above the ceiling. */
  readonly probability: number;
  /** Of future runs: those above the ceiling at some time; 0 without one. */
  readonly ceilingRisk: number;
}

export const leastShare = 0.95;
const rooms = 60;
/** Middles of equal parts of the run-to-run shift's distribution. */
const shifts = Array.from({ length: 6 }, (_, index) => normalQuantile((index + 0.5) / 6));
/** Minutes between the moments looked at: a twelfth of a swing as it can still reach the food. */
const every = 2;

export interface Future {
  /** Of the food's steady course in each room, rising, for each length asked. */
  readonly sorted: (container: RespondingContainer, hours: number) => readonly Float64Array[];
  /** Mean of that over the hours in each room. */
  readonly means: (container: RespondingContainer, hours: number) => Float64Array;
}

/**
 * Future runs of one appliance, begun at any time of day, once they are warm.
 * Courses are made once for each container, sorted once for each length.
 *
 * @param hours the longest that will be asked
 */
export function createFuture(
  random: Random,
  appliance: RespondingAppliance,
  habit: RoomHabit,
  hours: number,
): Future {
  const parts = Array.from({ length: rooms }, (_, index) => {
    const hourAtZero = (24 * (index + random.next())) / rooms;
    const conditions = { room: sampleRoomWave(random, habit, hourAtZero), phase: random.next() };
    return steadyParts(appliance, conditions, hours * 60);
  });
  const courses = kept((container: RespondingContainer) =>
    parts.map((part) => steadyCourse(part, container)),
  );
  const cut = (container: RespondingContainer, length: number): readonly Float64Array[] => {
    if (length > hours) throw new RangeError(`${length} h asked of runs of ${hours} h`);
    return courses(container).map((course) => everySecond(course, length * 60));
  };
  const sorted = keptBoth((container, length) =>
    cut(container, length).map((one) => one.toSorted()),
  );
  const means = keptBoth((container, length) => Float64Array.from(cut(container, length), meanOf));
  return { sorted, means };
}

/** The outlook of a setting's bath level with one container. */
export function outlook(
  future: Future,
  appliance: RespondingAppliance,
  container: RespondingContainer,
  level: number,
  asked: Asked,
): Outlook {
  const through = 1 - container.shareLost;
  const [total, met, passed] = [{ share: 0 }, { runs: 0 }, { runs: 0 }];
  const sorted = future.sorted(container, asked.hours);
  for (const course of sorted) {
    for (const shift of shifts) {
      const at = through * (level + shift * appliance.runDeviation);
      const share = insideShare(course, asked.low - at, asked.high - at);
      const isOver = asked.ceiling !== null && course[course.length - 1]! + at > asked.ceiling;
      total.share += share;
      if (isOver) passed.runs += 1;
      else if (share >= leastShare) met.runs += 1;
    }
  }
  const runs = sorted.length * shifts.length;
  return {
    share: total.share / runs,
    probability: met.runs / runs,
    ceilingRisk: passed.runs / runs,
  };
}

/** Hold mean of one fresh run: a room of the future's and a shift of its own. */
export function freshHoldMean(
  random: Random,
  future: Future,
  appliance: RespondingAppliance,
  container: RespondingContainer,
  level: number,
  hours: number,
): number {
  const shifted = level + random.normal(0, appliance.runDeviation);
  const means = future.means(container, hours);
  return (1 - container.shareLost) * shifted + means[random.integer(0, means.length - 1)]!;
}

/** Long-run mean of the food, degC. */
export const expectedHoldMean = (
  future: Future,
  container: RespondingContainer,
  level: number,
  hours: number,
): number => (1 - container.shareLost) * level + meanOf(future.means(container, hours));

const meanOf = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const everySecond = (course: Float64Array, length: number): Float64Array =>
  Float64Array.from({ length: Math.floor(length / every) }, (_, i) => course[i * every]!);

/** Part of rising values within low..high, both included. */
export function insideShare(rising: Float64Array, low: number, high: number): number {
  const count = rising.length;
  if (rising[0]! >= low && rising[count - 1]! <= high) return 1;
  return (countUpTo(rising, high, true) - countUpTo(rising, low, false)) / count;
}

function countUpTo(rising: Float64Array, limit: number, included: boolean): number {
  let [from, to] = [0, rising.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    const isBelow = included ? rising[middle]! <= limit : rising[middle]! < limit;
    if (isBelow) from = middle + 1;
    else to = middle;
  }
  return from;
}

const kept = <Key, Value>(make: (key: Key) => Value): ((key: Key) => Value) => {
  const made = new Map<Key, Value>();
  return (key) => {
    const value = made.get(key) ?? make(key);
    made.set(key, value);
    return value;
  };
};

const keptBoth = <Value>(
  make: (container: RespondingContainer, hours: number) => Value,
): ((container: RespondingContainer, hours: number) => Value) => {
  const byContainer = kept((container: RespondingContainer) =>
    kept((hours: number) => make(container, hours)),
  );
  return (container, hours) => byContainer(container)(hours);
};
