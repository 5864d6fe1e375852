/** Draws a control that suits the body it has to keep warm. */
import type { ApplianceKind } from "./appliance-kinds.ts";
import type { Control } from "./control.ts";
import type { Random } from "./random.ts";

/** Everything the control is drawn from: heat lost at the target and how fast things follow. */
export interface Body {
  readonly target: number;
  readonly room: number;
  readonly heated: number;
  readonly bath: number;
  /** W/K, all ways out with the lid on. */
  readonly loss: number;
  /** J/K that the thermostat's cycle heats: all of it in water, air and walls only in a box. */
  readonly capacity: number;
  /** J/K of all bodies. */
  readonly wholeCapacity: number;
}

/** Control with the error of the dial in its setpoint. */
export function sampleControl(
  random: Random,
  kind: ApplianceKind,
  body: Body,
  sensorIsHeated: boolean,
): Control {
  const setpoint = body.target + random.normal(0, 1);
  const lost = body.loss * (body.target - body.room);
  if (kind === "unthermostatted")
    return { kind: "constant", power: lost * random.uniform(0.9, 1.15) };
  const power = Math.max(lost / random.logUniform(0.05, 0.5), (body.wholeCapacity * 4) / 3600);
  const isProportional =
    kind === "circulating bath" || (kind === "warming box" && random.chance(0.25));
  if (isProportional) return proportional(random, setpoint, power);
  return {
    kind: "hysteresis",
    setpoint,
    power,
    width: cycleWidth(random, body, power, lost, sensorIsHeated),
  };
}

const proportional = (random: Random, setpoint: number, power: number): Control => ({
  kind: "proportional-integral",
  setpoint,
  power,
  band: random.uniform(1, 6),
  integralSeconds: random.logUniform(600, 5400),
  integralLimit: random.chance(0.3) ? random.uniform(1, 1.5) : random.uniform(0.6, 1),
  noise: random.uniform(0, 0.05),
});

/**
 * A width whose cycle, C width / lost / (1 - duty), lasts at most 90 min. On a
 * sensor in the bath it also lasts 5 min at least and swings the bath by 0.1
 * to 2.5 degC either way; on the jacket it may be as short as it comes out.
 */
function cycleWidth(
  random: Random,
  body: Body,
  power: number,
  lost: number,
  sensorIsHeated: boolean,
): number {
  const secondsPerDegree = body.capacity / lost / Math.max(0.1, 1 - lost / power);
  const narrowest = sensorIsHeated ? 0.4 : Math.max(0.2, 300 / secondsPerDegree);
  const most = sensorIsHeated ? 8 : 5;
  const widest = Math.max(narrowest * 1.01, Math.min(most, 5400 / secondsPerDegree));
  return random.chance(0.5)
    ? random.logUniform(narrowest, widest)
    : random.uniform(narrowest, widest);
}
