/** Thermometers of known error, as a kitchen would describe them. */
import type { KitchenThermometer } from "../../src/kitchen/kitchen.ts";
import type { Random } from "./random.ts";

export interface RespondingThermometer {
  readonly thermometer: KitchenThermometer;
  /** Reading minus truth at a true temperature, degC; the same in all its tests. */
  readonly error: (celsius: number) => number;
  /** Standard deviation of what the person cannot know of that error, degC. */
  readonly doubt: number;
}

/** Departure of its scale over one degC, as a standard deviation (common practice, no source). */
const scaleDeviation = 0.003;
const checkedNear = 38;

/** Checked against a reference in two of three kitchens, else known by its specification. */
export function sampleRespondingThermometer(random: Random, id: string): RespondingThermometer {
  const resolution = random.choice([0.1, 0.0625]);
  const scale = random.normal(0, scaleDeviation);
  const accuracy = random.choice([0.5, 1]);
  const offset = random.uniform(-accuracy, accuracy);
  const error = (celsius: number): number => offset + scale * (celsius - checkedNear);
  const bare = { id, name: id, resolution, accuracy, checks: [] };
  if (random.chance(1 / 3)) return { thermometer: bare, error, doubt: accuracy / Math.sqrt(3) };
  const doubt = random.uniform(0.05, 0.2);
  return {
    thermometer: { ...bare, checks: [check(random, error, doubt, resolution)] },
    error,
    doubt,
  };
}

/** The reference said `truth`, the water was off that by its standard uncertainty. */
function check(
  random: Random,
  error: RespondingThermometer["error"],
  truthUncertainty: number,
  resolution: number,
): KitchenThermometer["checks"][number] {
  const truth = Math.round(random.uniform(36, 41) * 10) / 10;
  const water = truth + random.normal(0, truthUncertainty);
  const read = (): number => shownAs(water + error(water) + random.normal(0, 0.02), resolution);
  return {
    kind: "reference",
    truth,
    truthUncertainty,
    readings: [read(), read(), read()],
    date: "2026-02-14",
    confirmed: false,
  };
}

export const shownAs = (celsius: number, resolution: number): number =>
  Math.round(Math.round(celsius / resolution) * resolution * 1e4) / 1e4;
