/**
 * The room over days: a base, a day-night wave with its lowest point near
 * sunrise, a slow wander (first-order autoregressive), and in some homes a
 * heating that is set back for the night. Times are seconds from the
 * appliance's switch-on.
 */
import type { Random } from "./random.ts";

export interface RoomCourse {
  /** Room temperature, degC, linear between minutes, held at the ends. */
  readonly at: (seconds: number) => number;
  readonly base: number;
  readonly nightFall: number;
  readonly hasNightSetback: boolean;
}

export interface RoomPlan {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** Time of day at zero seconds, hours. */
  readonly hourAtZero: number;
  readonly setbackChance: number;
}

export function createRoom(random: Random, plan: RoomPlan): RoomCourse {
  const base = random.uniform(17, 25);
  const nightFall = random.uniform(0.5, 4);
  const setback = random.chance(plan.setbackChance) ? sampleSetback(random) : null;
  const lowestHour = random.uniform(4, 7);
  const wander = { deviation: random.uniform(0.05, 0.4), hours: random.uniform(0.7, 4) };
  const count = Math.ceil((plan.toSeconds - plan.fromSeconds) / 60) + 2;
  const course = new Float64Array(count);
  let drifting = random.normal(0, wander.deviation);
  let lowered = setback !== null && setback.isNight(hourOf(plan, 0)) ? 1 : 0;
  const keep = Math.exp(-1 / (60 * wander.hours));
  for (let index = 0; index < count; index += 1) {
    const hour = hourOf(plan, index);
    const wave = (1 + Math.cos((2 * Math.PI * (hour - lowestHour)) / 24)) / 2;
    drifting = drifting * keep + random.normal(0, wander.deviation * Math.sqrt(1 - keep * keep));
    if (setback !== null)
      lowered += ((setback.isNight(hour) ? 1 : 0) - lowered) / setback.lagMinutes;
    course[index] = base - nightFall * wave - lowered * (setback?.by ?? 0) + drifting;
  }
  const at = (seconds: number): number => interpolated(course, (seconds - plan.fromSeconds) / 60);
  return { at, base, nightFall, hasNightSetback: setback !== null };
}

const hourOf = (plan: RoomPlan, index: number): number =>
  (((plan.hourAtZero + plan.fromSeconds / 3600 + index / 60) % 24) + 24) % 24;

/** Heating turned down in the evening and up in the morning; the room follows with a lag. */
function sampleSetback(random: Random) {
  const evening = random.uniform(21.5, 23.8);
  const morning = random.uniform(5.5, 7.5);
  return {
    by: random.uniform(0.8, 3),
    lagMinutes: random.uniform(25, 120),
    isNight: (hour: number): boolean => hour >= evening || hour < morning,
  };
}

function interpolated(course: Float64Array, position: number): number {
  const held = Math.min(Math.max(position, 0), course.length - 1.000001);
  const index = Math.floor(held);
  return course[index]! + (held - index) * (course[index + 1]! - course[index]!);
}
