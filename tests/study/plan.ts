/**
 * What the calibration study draws on top of the simulated population
 * (tests/simulator/population.ts), in streams of its own.
 *
 * Promise: "this run" (55 %) is one test decided by itself with no scatter from
 * run to run, its truth the same run going on; "next run" (45 %) is one to three
 * tests of one set-up in a kitchen, its truth another night's run of the same
 * appliance. Runs scatter about the appliance's level by a normal with a
 * standard deviation of 0.08..0.45 degC, drawn per appliance.
 */
import type { Variation } from "../simulator/appliance-kinds.ts";
import { createRandom } from "../simulator/random.ts";

export interface StudyPlan {
  readonly promise: "this run" | "next run";
  readonly tests: number;
  readonly variation: Variation | null;
  readonly room: "recorded" | "stated" | "unknown";
  readonly thermometer: "specified" | "corrected" | "checked";
  /** The person says, truly, whether there is a thermostat. */
  readonly saysThermostat: boolean;
  /** Standard deviation of the appliance's runs, degC; 0 where the same run goes on. */
  readonly runScatter: number;
}

export function studyPlan(seed: number): StudyPlan {
  const random = createRandom(seed, "study");
  const variation = random.weighted<Variation | null>([
    [null, 52],
    ["stepped heating", 16],
    ["lid later", 10],
    ["sensor moved", 12],
    ["slow jars", 10],
  ]);
  const promise = random.chance(0.55) ? "this run" : "next run";
  const repeats = random.weighted([[1, 40] as const, [2, 35], [3, 25]]);
  const tests = promise === "this run" ? 1 : repeats;
  const room = random.weighted<StudyPlan["room"]>([
    ["recorded", 35],
    ["stated", 35],
    ["unknown", 30],
  ]);
  const knownBetter = random.chance(promise === "this run" ? 0.3 : 0.5);
  const better = promise === "this run" ? "corrected" : "checked";
  return {
    promise,
    tests,
    variation,
    room,
    thermometer: knownBetter ? better : "specified",
    saysThermostat: random.chance(0.5),
    runScatter: promise === "this run" ? 0 : random.logUniform(0.08, 0.45),
  };
}
