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
  /** Base of the usual night. */
  readonly home: number;
  readonly nightFall: number;
  readonly hasNightSetback: boolean;
}

export interface RoomPlan {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** Time of day at zero seconds, hours. */
  readonly hourAtZero: number;
  readonly setbackChance: number;
  /** Draws a heating in steps, setback and morning boost, in place of the one of `setbackChance`. */
  readonly steps?: Random;
  /** Draws the weather and wander of another night in the same home. */
  readonly otherNight?: Random;
}

/** From one night to another, degC and times: assumed, no source. */
const baseMoves = 0.7;
const fallMoves = 0.3;

export function createRoom(random: Random, plan: RoomPlan): RoomCourse {
  const home = random.uniform(17, 25);
  const usualFall = random.uniform(0.5, 4);
  const drawn = random.chance(plan.setbackChance) ? sampleSetback(random) : null;
  const setback = plan.steps === undefined ? drawn : sampleSteps(plan.steps);
  const lowestHour = random.uniform(4, 7);
  const wander = { deviation: random.uniform(0.05, 0.4), hours: random.uniform(0.7, 4) };
  const air = plan.otherNight;
  const base = home + (air?.normal(0, baseMoves) ?? 0);
  const nightFall = usualFall * (1 + (air?.uniform(-fallMoves, fallMoves) ?? 0));
  const { normal } = air ?? random;
  const count = Math.ceil((plan.toSeconds - plan.fromSeconds) / 60) + 2;
  const course = new Float64Array(count);
  let drifting = normal(0, wander.deviation);
  let lowered = setback === null ? 0 : setback.loweredAt(hourOf(plan, 0));
  const keep = Math.exp(-1 / (60 * wander.hours));
  for (let index = 0; index < count; index += 1) {
    const hour = hourOf(plan, index);
    const wave = (1 + Math.cos((2 * Math.PI * (hour - lowestHour)) / 24)) / 2;
    drifting = drifting * keep + normal(0, wander.deviation * Math.sqrt(1 - keep * keep));
    if (setback !== null) lowered += (setback.loweredAt(hour) - lowered) / setback.lagMinutes;
    course[index] = base - nightFall * wave - lowered * (setback?.by ?? 0) + drifting;
  }
  const at = (seconds: number): number => interpolated(course, (seconds - plan.fromSeconds) / 60);
  return { at, base, home, nightFall, hasNightSetback: setback !== null };
}

const hourOf = (plan: RoomPlan, index: number): number =>
  (((plan.hourAtZero + plan.fromSeconds / 3600 + index / 60) % 24) + 24) % 24;

interface Setback {
  /** degC. */
  readonly by: number;
  readonly lagMinutes: number;
  /** 1 by night, 0 by day, below 0 while the heating makes up for the night. */
  readonly loweredAt: (hour: number) => number;
}

/** Heating turned down in the evening and up in the morning; the room follows with a lag. */
function sampleSetback(random: Random): Setback {
  const evening = random.uniform(21.5, 23.8);
  const morning = random.uniform(5.5, 7.5);
  return {
    by: random.uniform(0.8, 3),
    lagMinutes: random.uniform(25, 120),
    loweredAt: (hour) => (hour >= evening || hour < morning ? 1 : 0),
  };
}

/** A deeper setback that the room follows within the hour, and 0.5 to 2 degC too much for a while in the morning. */
function sampleSteps(random: Random): Setback {
  const by = random.uniform(1, 4);
  const evening = random.uniform(20.5, 23.8);
  const morning = random.uniform(5, 8);
  const boosted = morning + random.uniform(1, 2.5);
  const boost = random.uniform(0.5, 2);
  return {
    by,
    lagMinutes: random.uniform(10, 40),
    loweredAt: (hour) => (hour >= evening || hour < morning ? 1 : hour < boosted ? -boost / by : 0),
  };
}

function interpolated(course: Float64Array, position: number): number {
  const held = Math.min(Math.max(position, 0), course.length - 1.000001);
  const index = Math.floor(held);
  return course[index]! + (held - index) * (course[index + 1]! - course[index]!);
}
