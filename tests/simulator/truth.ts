/**
 * What is true about a simulated water test, from noise-free temperatures.
 *
 * Settled course. Every run has a twin that was switched on a day earlier, in
 * the same room, and never disturbed or switched off: its food temperature is
 * what the appliance settles to at each moment, night drift included. Its
 * local range at t is its lowest and highest within an hour either way of t
 * (a whole cycle of every thermostat here).
 *
 * Hold start (`start`, the one scored): first time after switch-on from which
 * the undisturbed run stays, until the hold ends, within the twin's local
 * range widened by 0.5 degC. Other definitions, to show how much depends on it:
 * - `startFirstEntry`: first time the run is within that widened range at all;
 * - `startWithinHalfDegree`: first time from which the run stays for an hour
 *   within 0.5 degC plus half the local swing of the twin's local mean;
 * - `startOwnRange`: first time from which the run stays within the central
 *   95 % of its own second half, widened by 0.5 degC.
 *
 * Hold end: program switch-off, probe pulled out, or last reading. After a
 * switch-off a jar stays warm for a while: `leavesRange` says for how long.
 */
import type { Disturbances, TestPlan } from "./events.ts";
import type { Trace } from "./run.ts";

export interface HoldTimes {
  /** Seconds from switch-on; null where the test ends before. */
  readonly start: number | null;
  readonly startFirstEntry: number | null;
  readonly startWithinHalfDegree: number | null;
  readonly startOwnRange: number | null;
  readonly end: number;
}

export interface TruePhase {
  readonly kind: "idle" | "warm-up" | "hold" | "disturbance" | "cool-down";
  readonly cause?: "lid-lifted" | "power-cut" | "probe-out" | "switched-off";
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

const widening = 0.5;
const localSeconds = 3600;

/** Lowest and highest of `course` within `reach` samples either way (monotonic queue, linear time). */
export function localRange(
  course: Float64Array,
  reach: number,
): { readonly low: Float64Array; readonly high: Float64Array } {
  return { low: slidingLowest(course, reach, 1), high: slidingLowest(course, reach, -1) };
}

function slidingLowest(course: Float64Array, reach: number, sign: 1 | -1): Float64Array {
  const queue = new Int32Array(course.length);
  const result = new Float64Array(course.length);
  let [head, tail, next] = [0, 0, 0];
  for (let centre = 0; centre < course.length; centre += 1) {
    for (; next < course.length && next <= centre + reach; next += 1) {
      while (tail > head && sign * course[queue[tail - 1]!]! >= sign * course[next]!) tail -= 1;
      queue[tail] = next;
      tail += 1;
    }
    while (queue[head]! < centre - reach) head += 1;
    result[centre] = course[queue[head]!]!;
  }
  return result;
}

/** Value below which the share of the values lies, by linear interpolation between order statistics. */
export function quantile(values: Float64Array, share: number): number {
  const sorted = values.toSorted();
  const position = share * (sorted.length - 1);
  const index = Math.min(Math.floor(position), sorted.length - 2);
  if (sorted.length < 2) return sorted[0] ?? NaN;
  return sorted[index]! + (position - index) * (sorted[index + 1]! - sorted[index]!);
}

/** Course of the settled twin on the grid of `run`, with its local range and mean. */
export interface Settled {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** Both runs share their step; the twin began earlier, a whole number of steps. */
export function settledCourse(run: Trace, twin: Trace): Settled {
  const ahead = Math.round((run.fromSeconds - twin.fromSeconds) / run.stepSeconds);
  const { low, high } = localRange(twin.food, Math.round(localSeconds / run.stepSeconds));
  return {
    low: low.slice(ahead, ahead + run.food.length),
    high: high.slice(ahead, ahead + run.food.length),
  };
}

/** Hold times of the undisturbed `run`, looked for between switch-on and `end` (seconds). */
export function holdTimes(run: Trace, settled: Settled, end: number): HoldTimes {
  const index = (seconds: number): number =>
    Math.max(0, Math.round((seconds - run.fromSeconds) / run.stepSeconds));
  const seconds = (at: number | null): number | null =>
    at === null ? null : run.fromSeconds + at * run.stepSeconds;
  const first = index(0);
  const last = Math.min(index(end), run.food.length - 1);
  const inside = (at: number): boolean =>
    run.food[at]! >= settled.low[at]! - widening && run.food[at]! <= settled.high[at]! + widening;
  const near = (at: number): boolean =>
    Math.abs(run.food[at]! - (settled.low[at]! + settled.high[at]!) / 2) <=
    widening + (settled.high[at]! - settled.low[at]!) / 2;
  const own = run.food.slice(Math.floor((first + last) / 2), last + 1);
  const [ownLow, ownHigh] = [quantile(own, 0.025) - widening, quantile(own, 0.975) + widening];
  const ownInside = (at: number): boolean => run.food[at]! >= ownLow && run.food[at]! <= ownHigh;
  return {
    start: seconds(staysFrom(first, last, inside)),
    startFirstEntry: seconds(staysFor(first, last, 1, inside)),
    startWithinHalfDegree: seconds(staysFor(first, last, index(run.fromSeconds + 3600), near)),
    startOwnRange: seconds(staysFrom(first, last, ownInside)),
    end,
  };
}

/** First step from which the test is met up to and including `last`; null where `last` fails. */
function staysFrom(first: number, last: number, met: (at: number) => boolean): number | null {
  let at = last;
  while (at >= first && met(at)) at -= 1;
  return at === last ? null : at + 1;
}

/** First step from which the test is met for `length` steps. */
function staysFor(
  first: number,
  last: number,
  length: number,
  met: (at: number) => boolean,
): number | null {
  let spell = 0;
  for (let at = first; at <= last; at += 1) {
    spell = met(at) ? spell + 1 : 0;
    if (spell === length) return at - length + 1;
  }
  return null;
}

/** First time from `from` on that the food is outside the widened settled range; the run's end where it never is. */
export function leavesRange(run: Trace, settled: Settled, from: number): number {
  let at = Math.round((from - run.fromSeconds) / run.stepSeconds);
  const inside = (): boolean =>
    run.food[at]! >= settled.low[at]! - widening && run.food[at]! <= settled.high[at]! + widening;
  while (at < run.food.length - 1 && inside()) at += 1;
  return run.fromSeconds + at * run.stepSeconds;
}

/** When a disturbance is over: last time before `limit` that the disturbed food is outside the widened settled range, or the spell's own end. */
export function recoveredBy(
  disturbed: Trace,
  settled: Settled,
  spell: readonly [number, number],
  limit: number,
): number {
  const step = disturbed.stepSeconds;
  const index = (seconds: number): number => Math.round((seconds - disturbed.fromSeconds) / step);
  let at = Math.min(index(limit), disturbed.food.length - 1);
  const inside = (): boolean =>
    disturbed.food[at]! >= settled.low[at]! - widening &&
    disturbed.food[at]! <= settled.high[at]! + widening;
  while (at > index(spell[1]) && inside()) at -= 1;
  return disturbed.fromSeconds + at * step;
}

/** The night as contiguous phases, seconds from switch-on. */
export function truePhases(
  plan: TestPlan,
  hold: { readonly start: number | null; readonly end: number },
  disturbances: Disturbances,
  recovered: ReadonlyMap<number, number>,
): readonly TruePhase[] {
  const phases: TruePhase[] = [];
  const add = (phase: TruePhase): void => {
    if (phase.toSeconds > phase.fromSeconds) phases.push(phase);
  };
  const { logFrom, logTo } = plan;
  add({ kind: "idle", fromSeconds: logFrom, toSeconds: Math.min(0, logTo) });
  const holdFrom = Math.max(hold.start ?? hold.end, logFrom);
  add({ kind: "warm-up", fromSeconds: Math.max(0, logFrom), toSeconds: holdFrom });
  let at = holdFrom;
  const spells = [
    ...disturbances.lidOpen.map((spell) => ({ spell, cause: "lid-lifted" as const })),
    ...disturbances.powerCuts.map((spell) => ({ spell, cause: "power-cut" as const })),
  ].toSorted((a, b) => a.spell[0] - b.spell[0]);
  for (const { spell, cause } of spells) {
    const to = Math.min(recovered.get(spell[0]) ?? spell[1], hold.end);
    add({ kind: "hold", fromSeconds: at, toSeconds: spell[0] });
    add({ kind: "disturbance", cause, fromSeconds: spell[0], toSeconds: to });
    at = to;
  }
  add({ kind: "hold", fromSeconds: at, toSeconds: hold.end });
  const cause = disturbances.pulledAt === null ? "switched-off" : "probe-out";
  add({ kind: "cool-down", cause, fromSeconds: hold.end, toSeconds: logTo });
  return phases;
}
