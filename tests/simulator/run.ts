/** One run of an appliance in a room: the noise-free temperatures, step by step. */
import { createController, type Control } from "./control.ts";
import type { Random } from "./random.ts";
import { createStepper, lagged, type Network } from "./thermal.ts";

export interface Appliance {
  readonly network: Network;
  readonly control: Control;
  /** The thermostat's sensor: which body it sits on and how slowly it follows. */
  readonly sensor: { readonly node: number; readonly lagSeconds: number };
  readonly foodNode: number;
  readonly bathNode: number;
}

/** Seconds from switch-on, from and to. */
export type Spell = readonly [from: number, to: number];

export interface RunPlan {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly switchOn: number;
  /** Infinity where the appliance is left on. */
  readonly switchOff: number;
  readonly powerCuts: readonly Spell[];
  readonly lidOpen: readonly Spell[];
  readonly initial: readonly number[];
  readonly room: (seconds: number) => number;
}

/** Temperatures at fromSeconds + i * stepSeconds, degC. */
export interface Trace {
  readonly fromSeconds: number;
  readonly stepSeconds: number;
  readonly food: Float64Array;
  readonly bath: Float64Array;
  readonly room: Float64Array;
  /** Mean heater power over the step before, W. */
  readonly power: Float64Array;
}

export const stepSeconds = 10;

export function simulateRun(
  appliance: Appliance,
  plan: RunPlan,
  random: Random,
  seconds = stepSeconds,
): Trace {
  const count = Math.floor((plan.toSeconds - plan.fromSeconds) / seconds) + 1;
  const trace = emptyTrace(plan.fromSeconds, seconds, count);
  const state = Float64Array.from(plan.initial);
  const advance = createStepper(appliance.network);
  const control = createController(appliance.control, random);
  let sensed = state[appliance.sensor.node]!;
  for (let index = 0; index < count; index += 1) {
    const time = plan.fromSeconds + index * seconds;
    const room = plan.room(time);
    trace.food[index] = state[appliance.foodNode]!;
    trace.bath[index] = state[appliance.bathNode]!;
    trace.room[index] = room;
    const powered =
      time >= plan.switchOn && time < plan.switchOff && !isWithin(plan.powerCuts, time);
    const power = powered ? control(sensed, seconds) : 0;
    advance(state, { power, room, lidOpen: isWithin(plan.lidOpen, time) }, seconds);
    sensed = lagged(sensed, state[appliance.sensor.node]!, appliance.sensor.lagSeconds, seconds);
    trace.power[index] = power;
  }
  return trace;
}

const emptyTrace = (fromSeconds: number, seconds: number, count: number): Trace => ({
  fromSeconds,
  stepSeconds: seconds,
  food: new Float64Array(count),
  bath: new Float64Array(count),
  room: new Float64Array(count),
  power: new Float64Array(count),
});

export const isWithin = (spells: readonly Spell[], time: number): boolean =>
  spells.some(([from, to]) => time >= from && time < to);

/** Value of one course of the trace at any time, linear between steps, held at the ends. */
export function valueAt(trace: Trace, course: Float64Array, time: number): number {
  const position = (time - trace.fromSeconds) / trace.stepSeconds;
  const held = Math.min(Math.max(position, 0), course.length - 1);
  const index = Math.min(Math.floor(held), course.length - 2);
  return course[index]! + (held - index) * (course[index + 1]! - course[index]!);
}
