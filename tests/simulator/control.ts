/** What turns the heater up and down. */
import type { Random } from "./random.ts";

export type Control =
  | {
      /** On below setpoint - width / 2, off above setpoint + width / 2. */
      readonly kind: "hysteresis";
      readonly setpoint: number;
      readonly width: number;
      readonly power: number;
    }
  | {
      /** Power in proportion to the error and its integral, limited to 0..power. */
      readonly kind: "proportional-integral";
      readonly setpoint: number;
      readonly power: number;
      /** Error that asks for full power, degC. */
      readonly band: number;
      readonly integralSeconds: number;
      /** Largest integral share of full power: above 1 it winds up and overshoots. */
      readonly integralLimit: number;
      /** Standard deviation of the controller's own sensor noise, degC. */
      readonly noise: number;
    }
  | {
      /** No thermostat: the food follows the room. */
      readonly kind: "constant";
      readonly power: number;
    };

/** Asked once a step with the sensor's temperature; answers with watts. */
export type Controller = (measured: number, seconds: number) => number;

export function createController(control: Control, random: Random): Controller {
  if (control.kind === "constant") return () => control.power;
  if (control.kind === "hysteresis") return hysteresis(control);
  return proportionalIntegral(control, random);
}

function hysteresis(control: Extract<Control, { kind: "hysteresis" }>): Controller {
  const { setpoint, width, power } = control;
  let heating = true;
  return (measured) => {
    if (measured >= setpoint + width / 2) heating = false;
    else if (measured <= setpoint - width / 2) heating = true;
    return heating ? power : 0;
  };
}

function proportionalIntegral(
  control: Extract<Control, { kind: "proportional-integral" }>,
  random: Random,
): Controller {
  let integral = 0;
  return (measured, seconds) => {
    const error = (control.setpoint - measured + random.normal(0, control.noise)) / control.band;
    integral += (error * seconds) / control.integralSeconds;
    integral = Math.min(control.integralLimit, Math.max(0, integral));
    return control.power * Math.min(1, Math.max(0, error + integral));
  };
}
