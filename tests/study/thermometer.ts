/**
 * The thermometer of a case: its error, and what the person knows of it.
 *
 * Specified: error even within +-A. Corrected: a correction with its standard
 * uncertainty. Checked: an error that is a straight line over 0 to 100 degC
 * (offset normal, 0.5 degC; slope normal, half a degree in 100) and a bend of up
 * to 0.1 degC in the middle, read in ice and in boiling water.
 */
import type { KitchenThermometer } from "../../src/kitchen/kitchen.ts";
import type { ThermometerCheck } from "../../src/thermometer/thermometer.ts";
import type { Logger } from "../simulator/logger.ts";
import type { Random } from "../simulator/random.ts";
import type { StudyPlan } from "./plan.ts";

export interface StudyThermometer {
  readonly faults: Pick<Logger, "error" | "scale">;
  /** degC; null where no specification is known. */
  readonly accuracy: number | null;
  readonly correction: number;
  /** Of the correction, degC; null where it is the specification's. */
  readonly uncertainty: number | null;
  readonly checks: readonly ThermometerCheck[];
}

export function studyThermometer(
  random: Random,
  kind: StudyPlan["thermometer"],
  { resolution, noise }: Pick<Logger, "resolution" | "noise">,
): StudyThermometer {
  if (kind === "specified") {
    const accuracy = random.choice([0.1, 0.2, 0.3, 0.5, 0.5, 1]);
    const faults = { error: random.uniform(-accuracy, accuracy) };
    return { faults, accuracy, correction: 0, uncertainty: null, checks: [] };
  }
  if (kind === "corrected") {
    const correction = Number(random.normal(0, 0.6).toFixed(2));
    const uncertainty = random.choice([0.05, 0.1, 0.2, 0.3]);
    const faults = { error: -correction + random.normal(0, uncertainty) };
    return { faults, accuracy: null, correction, uncertainty, checks: [] };
  }
  const scale = random.normal(0, 0.005);
  const offset = random.normal(0, 0.5);
  const errorAt40 = offset + 40 * scale + random.uniform(-0.1, 0.1);
  const read = (truth: number): readonly number[] =>
    Array.from({ length: 3 }, () => {
      const value = truth + offset + scale * truth + random.normal(0, noise);
      return Number((Math.round(value / resolution) * resolution).toFixed(4));
    });
  return {
    faults: { error: errorAt40, scale },
    accuracy: null,
    correction: 0,
    uncertainty: null,
    checks: [
      { kind: "ice", readings: read(random.normal(0, 0.05)), date: null, confirmed: true },
      boilingCheck(random, read),
    ],
  };
}

/** Boiled somewhere up to 1,500 m on a day of any weather; half of the people read a barometer. */
function boilingCheck(
  random: Random,
  read: (truth: number) => readonly number[],
): ThermometerCheck {
  const altitude = Math.round(random.uniform(0, 1500));
  const pressure = standardPressure(altitude) + random.normal(0, 8);
  const readings = read(boilingAt(pressure) + random.normal(0, 0.1));
  const readsPressure = random.chance(0.5);
  const hectopascal = Number((pressure + random.normal(0, 1)).toFixed(1));
  const place = {
    altitude,
    pressure: readsPressure ? ({ hectopascal, reduced: "station" } as const) : null,
  };
  return { kind: "boiling", place, readings, date: null, confirmed: true };
}

/** hPa; ISO 2533 standard atmosphere, its first layer. */
export const standardPressure = (metres: number): number =>
  1013.25 * (1 - 2.25577e-5 * metres) ** 5.25588;

/** degC; Antoine's equation for water, 1 to 100 degC, pressure in mmHg (textbook constants, from memory); within 0.06 degC from 850 to 1013 hPa. */
export const boilingAt = (hectopascal: number): number =>
  1730.63 / (8.07131 - Math.log10(hectopascal / 1.33322)) - 233.426;

export const kitchenThermometer = (
  { accuracy, checks }: StudyThermometer,
  resolution: number,
): KitchenThermometer => ({ id: "probe", name: "Probe", resolution, accuracy, checks });
