import { describe, expect, it } from "vitest";
import { saturationTemperature } from "../../src/thermometer/saturation.ts";
import { pressureAtAltitude } from "../../src/thermometer/standard-atmosphere.ts";
import { correctionAt } from "../../src/thermometer/correction-at.ts";
import type { Thermometer, ThermometerCheck } from "../../src/thermometer/thermometer.ts";
import { thermometerModel } from "../../src/thermometer/thermometer-model.ts";
import { seededNormal, seededUniform } from "../stats/seeded-noise.ts";

/*
 * Simulated kitchens with known truth. Errors have the sizes that the program
 * states or assumes: ice bath 0.05, boiling pot 0.1, barometer 1 hPa, weather
 * 8 hPa, altitude 10 m, reference 0.1, scale 0.5 % where one temperature is
 * checked, +-0.1 of bend far from the checks. Single readings scatter by 0.05
 * and are shown in steps of 0.1 degC.
 */
const cases = 2000;
const working = 38;
const scatter = 0.05;
const step = 0.1;
const facts = { date: null, confirmed: false };

interface Dice {
  readonly normal: () => number;
  readonly uniform: () => number;
}

/** A thermometer's true correction at a reading, without the bend. */
type Truth = (reading: number) => number;

const shown = (truth: number, correction: Truth, { normal }: Dice): number[] =>
  [0, 1, 2].map(() => {
    let reading = truth;
    for (let pass = 0; pass < 20; pass++) reading = truth - correction(reading);
    return Math.round((reading + scatter * normal()) / step) * step;
  });

interface Kitchen {
  readonly name: string;
  readonly scaleError: number;
  readonly bend: number;
  readonly checks: (correction: Truth, dice: Dice) => readonly ThermometerCheck[];
}

/** One error for every ice bath of a kitchen. */
const iceChecks = (count: number, correction: Truth, dice: Dice): readonly ThermometerCheck[] => {
  const bath = 0.05 * dice.normal();
  return Array.from({ length: count }, () => ({
    kind: "ice",
    readings: shown(bath, correction, dice),
    ...facts,
  }));
};

const boilingAtStation = (correction: Truth, dice: Dice): ThermometerCheck => {
  const hectopascal = 940;
  const truth = saturationTemperature(hectopascal + dice.normal())! + 0.1 * dice.normal();
  return {
    kind: "boiling",
    readings: shown(truth, correction, dice),
    place: { altitude: null, pressure: { hectopascal, reduced: "station" } },
    ...facts,
  };
};

const boilingAtAltitude = (correction: Truth, dice: Dice): ThermometerCheck => {
  const pressure = pressureAtAltitude(600 + 10 * dice.normal())! + 8 * dice.normal();
  const truth = saturationTemperature(pressure)! + 0.1 * dice.normal();
  return {
    kind: "boiling",
    readings: shown(truth, correction, dice),
    place: { altitude: 600, pressure: null },
    ...facts,
  };
};

const referenceChecks = (
  truths: readonly number[],
  correction: Truth,
  dice: Dice,
): readonly ThermometerCheck[] => {
  const error = 0.1 * dice.normal();
  return truths.map((truth) => ({
    kind: "reference",
    readings: shown(truth + error, correction, dice),
    truth,
    truthUncertainty: 0.1,
    ...facts,
  }));
};

const kitchens: readonly Kitchen[] = [
  {
    name: "ice once",
    scaleError: 0.005,
    bend: 0,
    checks: (correction, dice) => iceChecks(1, correction, dice),
  },
  {
    name: "ice and boiling under a known pressure",
    scaleError: 0.005,
    bend: 0.1,
    checks: (correction, dice) => [
      ...iceChecks(1, correction, dice),
      boilingAtStation(correction, dice),
    ],
  },
  {
    name: "ice and boiling at a known altitude",
    scaleError: 0.005,
    bend: 0.1,
    checks: (correction, dice) => [
      ...iceChecks(1, correction, dice),
      boilingAtAltitude(correction, dice),
    ],
  },
  {
    name: "ice, and a reference at 40 degC",
    scaleError: 0.005,
    bend: 0,
    checks: (correction, dice) => [
      ...iceChecks(1, correction, dice),
      ...referenceChecks([40], correction, dice),
    ],
  },
  {
    name: "three ice baths, boiling, and a reference at 20 and 60 degC",
    scaleError: 0.005,
    bend: 0.1,
    checks: (correction, dice) => [
      ...iceChecks(3, correction, dice),
      boilingAtStation(correction, dice),
      ...referenceChecks([20, 60], correction, dice),
    ],
  },
  {
    name: "a reference at 36 and 41 degC, too close for a line",
    scaleError: 0.005,
    bend: 0,
    checks: (correction, dice) => referenceChecks([36, 41], correction, dice),
  },
];

/** Share of simulated kitchens whose 95 % interval holds the true correction at the working reading. */
const coverage = (kitchen: Kitchen, seed: number): number => {
  const dice = { normal: seededNormal(seed), uniform: seededUniform(seed + 1) };
  let covered = 0;
  for (let i = 0; i < cases; i++) {
    const offset = 0.5 * dice.normal();
    const scale = kitchen.scaleError * dice.normal();
    const correction: Truth = (reading) => offset + scale * reading;
    const thermometer: Thermometer = {
      resolution: step,
      accuracy: null,
      checks: kitchen.checks(correction, dice),
    };
    const found = correctionAt(thermometerModel(thermometer).model, working);
    const bend = kitchen.bend * (2 * dice.uniform() - 1);
    const error = Math.abs(found.correction - correction(working) - bend);
    if (error <= found.expanded) covered += 1;
  }
  return covered / cases;
};

describe("the 95 % interval of the correction at 38 degC", () => {
  it.each(kitchens.map((kitchen, index) => ({ kitchen, seed: 101 + 7 * index })))(
    "covers the truth: $kitchen.name",
    ({ kitchen, seed }) => {
      const share = coverage(kitchen, seed);
      // 2,000 cases at 95 % scatter by 0.5 %; above, steps and scatter count some error twice.
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.98);
    },
  );
});
