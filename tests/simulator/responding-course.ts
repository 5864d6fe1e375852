/**
 * Bath and food minute by minute, by linear filters:
 *
 *   bath = level(setting) + shift of the run + g (lagged room - 20) + swing
 *   food follows bath - phi (bath - room) with lag tau
 *
 * Once warm, all but level and shift is the same for every setting, and these
 * two reach the food as (1 - phi) of themselves: `steadyCourse` gives the rest.
 */
import type { BathSwing, RespondingAppliance } from "./responding-appliance.ts";
import type { RespondingContainer } from "./responding-container.ts";
import { roomAt, type RoomWave } from "./responding-room.ts";

/** Of the bath's swing at a part of its period, 0 to 1; mean 0, degC. */
export function swingAt(swing: BathSwing, phase: number): number {
  const at = phase - Math.floor(phase);
  const half = swing.peakToPeak / 2;
  const { risingShare: up } = swing;
  if (up === null) return half * Math.sin(2 * Math.PI * at);
  return half * (at < up ? (2 * at) / up - 1 : 1 - (2 * (at - up)) / (1 - up));
}

/** What follows `course` with a lag, minute by minute, from a starting value; exact where each minute is constant. */
export function followed(course: Float64Array, lagMinutes: number, start: number): Float64Array {
  const result = new Float64Array(course.length);
  const keep = Math.exp(-1 / lagMinutes);
  let value = start;
  for (let i = 0; i < course.length; i += 1) {
    value = course[i]! + (value - course[i]!) * keep;
    result[i] = value;
  }
  return result;
}

export interface RunConditions {
  readonly room: RoomWave;
  /** Where in its period the swing stands at minute 0, 0 to 1. */
  readonly phase: number;
}

/** Minutes before minute 0 in which lags of up to 3 h settle to a part in 50 of what little the room moves. */
const before = 720;

export interface SteadyParts {
  /** From `before` minutes ahead of minute 0. */
  readonly room: Float64Array;
  readonly bath: Float64Array;
}

/** Room, and the bath less level and shift, of a run that has long been warm. */
export function steadyParts(
  appliance: RespondingAppliance,
  { room: wave, phase }: RunConditions,
  minutes: number,
): SteadyParts {
  const { roomShare, roomLagMinutes, swing } = appliance;
  const room = Float64Array.from({ length: before + minutes }, (_, i) => roomAt(wave, i - before));
  const felt = followed(room, roomLagMinutes, wave.level);
  const bath = felt.map((value, i) => {
    const swung = swing === null ? 0 : swingAt(swing, phase + (i - before) / swing.periodMinutes);
    return roomShare * (value - 20) + swung;
  });
  return { room, bath };
}

/** The food less (1 - phi) times level and shift, from minute 0. */
export function steadyCourse(
  { room, bath }: SteadyParts,
  { shareLost, lagMinutes }: RespondingContainer,
): Float64Array {
  const aim = bath.map((value, i) => (1 - shareLost) * value + shareLost * room[i]!);
  return followed(aim, lagMinutes, aim[0]!).subarray(before);
}

export interface NightPlan extends RunConditions {
  /** Level of the setting and shift of the run together, degC. */
  readonly level: number;
  readonly minutes: number;
  /** Bath and food at switch-on, degC. */
  readonly start: { readonly bath: number; readonly food: number };
}

export interface Night {
  readonly room: Float64Array;
  readonly bath: Float64Array;
  readonly food: Float64Array;
}

/** A run from its switch-on: the thermostat's ramp or the free approach, then as `steadyParts`. */
export function simulateNight(
  appliance: RespondingAppliance,
  container: RespondingContainer,
  plan: NightPlan,
): Night {
  const steady = steadyParts(appliance, plan, plan.minutes);
  const room = steady.room.slice(before);
  const held = steady.bath.slice(before).map((value) => value + plan.level);
  const bath = warmedUp(appliance.warmUp, held, plan.start.bath);
  const { shareLost, lagMinutes } = container;
  const aim = bath.map((value, i) => value - shareLost * (value - room[i]!));
  return { room, bath, food: followed(aim, lagMinutes, plan.start.food) };
}

/** A ramp until it meets what is held; without a thermostat the difference dies away exponentially. */
function warmedUp(
  warmUp: RespondingAppliance["warmUp"],
  held: Float64Array,
  start: number,
): Float64Array {
  if ("ramp" in warmUp) {
    const ramp = (i: number): number => start + (warmUp.ramp * i) / 60;
    const met = held.findIndex((value, i) => ramp(i) >= value);
    return held.map((value, i) => (met === -1 || i < met ? ramp(i) : value));
  }
  return held.map((value, i) => value + (start - held[0]!) * Math.exp(-i / warmUp.lagMinutes));
}
