import { describe, expect, it } from "vitest";
import { expectedRun } from "../../src/advice/expected.ts";
import { fitResponse, testsOf } from "../../src/advice/response.ts";
import { asked } from "../culture/nights.ts";
import {
  adviceInput,
  basin,
  cooker,
  failedTest,
  fixed,
  jars,
  program,
  settledTest,
  step,
  type ConstructedTest,
} from "./constructed.ts";

const requirements = [asked(37, 39, 12)];
const fitted = (
  tests: readonly (ConstructedTest | null)[],
  more: Parameters<typeof cooker>[0] = {},
  room?: { readonly low: number; readonly high: number } | null,
) => {
  const input = adviceInput({
    requirements,
    containers: [jars, basin],
    tests: tests.map((one, at) =>
      one === null ? failedTest(`${at}`) : settledTest({ id: `${at}`, ...one }),
    ),
    ...(room === undefined ? {} : { room }),
  });
  return fitResponse(cooker(more), input);
};
const at = (setting: number, container = "jars") => ({ setting: step(setting), container });

/** Of a heater of fixed power tested once in a room known to this. */
const doubtInRoom = (standardDeviation: number): number => {
  const room = { mean: 21, standardDeviation };
  const appliance = { control: { kind: "fixed" }, thermostat: false } as const;
  const fit = fitted([{ setting: fixed, level: 44, room }], appliance);
  return expectedRun(fit, { setting: fixed, container: "jars" }).scale;
};

describe("fitResponse", () => {
  it("is the assumption where nothing was tested, or nothing settled", () => {
    const response = fitted([null]);
    const found = expectedRun(response, at(40, "basin"));
    expect(response.tests).toHaveLength(0);
    // Level 40, less 0.2 % of what stands between 40 and a room of 21.
    expect(found.mean).toBeCloseTo(40 - 0.002 * 19, 9);
    expect(found.degreesOfFreedom).toBe(8);
    expect(found.thermometer).toEqual({ standardUncertainty: 0, halfWidth: null });
  });

  it("follows a line that tests show, whatever was assumed", () => {
    // Constructed: food = 3 + 0.95 setting in the basin, no scatter, tested at five settings.
    const response = fitted(
      [30, 34, 38, 42, 46].map((one) => ({
        setting: step(one),
        container: "basin",
        level: 3 + 0.95 * one,
        room: { mean: 21, standardDeviation: 0.1 },
      })),
    );
    for (const one of [32, 40, 44]) {
      expect(
        Math.abs(expectedRun(response, at(one, "basin")).mean - (3 + 0.95 * one)),
      ).toBeLessThan(0.1);
    }
  });

  it("carries a measured stand-off to a setting and a room it was not measured at", () => {
    // Bath 40, room 20, food 39: a share of 0.05. At 30 in a room of 20 the food is to stand 0.5 below.
    const response = {
      offset: { value: 1, standardUncertainty: 0.02 },
      shareLost: { value: 0.05, standardUncertainty: 0.001 },
      lagMinutes: null,
      room: { mean: 20, from: "measured" },
    } as const;
    const fit = fitted([
      { setting: step(40), level: 39, room: { mean: 20, standardDeviation: 0.1 }, response },
    ]);
    const [food, bath] = ["jars", "basin"].map(
      (container) => expectedRun(fit, at(30, container)).mean,
    );
    const own = fit.containers[0]!.known.shareLost.value;
    expect(own).toBeGreaterThan(0.035);
    expect(bath! - food!).toBeCloseTo(own * (bath! - 21), 1);
  });

  it("gives a tested set-up its own level back where its food stands far below its bath", () => {
    // Constructed: food at 38 in a room of 21, standing off by a tenth of bath minus room, in many
    // runs that agree. Nothing is known against them; 0.05 is what the prior of the level still pulls.
    const jarsInAir = { ...jars, id: "shelf", stands: "jars in air" as const };
    const room = { mean: 21, standardDeviation: 0 };
    const tests = Array.from({ length: 8 }, (_, index) =>
      settledTest({ id: `${index}`, level: 38, container: "shelf", room }),
    );
    const input = adviceInput({ requirements, containers: [jarsInAir], tests });
    const found = expectedRun(fitResponse(cooker(), input), at(38, "shelf"));
    expect(Math.abs(found.mean - 38)).toBeLessThan(0.05);
  });

  it("is surer of what was tested than of what lies beyond it", () => {
    const fit = fitted([
      { setting: step(37), level: 37.2 },
      { setting: step(39), level: 39.1 },
    ]);
    const doubt = (one: number): number => expectedRun(fit, at(one)).scale;
    expect(doubt(38)).toBeLessThan(doubt(41));
    expect(doubt(41)).toBeLessThan(doubt(45));
    expect(expectedRun(fit, at(38, "basin")).scale).toBeGreaterThan(doubt(38));
  });

  it("counts one thermometer's doubt once, however many tests it took", () => {
    const fit = fitted([37, 38, 39, 38].map((one) => ({ setting: step(one), level: one })));
    const { standardUncertainty } = expectedRun(fit, at(38)).thermometer;
    expect(standardUncertainty).toBeGreaterThan(0.04);
    expect(standardUncertainty).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  it("lets tests in an unknown room say little of an appliance that follows it", () => {
    expect(doubtInRoom(2)).toBeGreaterThan(2 * doubtInRoom(0.2));
  });

  it("takes a regular cycle for a thermostat at work", () => {
    const swing = { peakToPeak: 0.8, periodMinutes: 25 };
    expect(fitted([{ level: 38, swing }], { thermostat: null }).thermostat).toBe(true);
    expect(fitted([{ level: 38 }], { thermostat: null }).thermostat).toBeNull();
    expect(fitted([{ level: 38, swing }], { thermostat: false }).thermostat).toBe(false);
  });

  it("learns nothing of one program from another", () => {
    const control = { kind: "programs", programs: ["warm", "mild"] } as const;
    const fit = fitted([{ setting: program("warm"), level: 44 }], { control });
    const of = (name: string) => expectedRun(fit, { setting: program(name), container: "jars" });
    expect(Math.abs(of("warm").mean - 44)).toBeLessThan(0.2);
    expect(of("mild").scale).toBeGreaterThan(4);
  });

  it("counts a bath probe's test for the bath, not for the food", () => {
    const fit = fitted([{ setting: step(40), level: 40, place: "bath" }]);
    const food = expectedRun(fit, at(40)).mean;
    expect(Math.abs(expectedRun(fit, at(40, "basin")).mean - 40)).toBeLessThan(0.1);
    expect(food).toBeLessThan(39.8);
  });
});

describe("testsOf", () => {
  it("gives the tests of one set-up", () => {
    const fit = fitted([
      { setting: step(38), level: 38 },
      { setting: step(39), level: 39 },
      { setting: step(38), level: 38.1 },
    ]);
    const found = testsOf(fit, { appliance: "cooker", setting: step(38), container: "jars" });
    expect(found.map(({ id }) => id)).toEqual(["0", "2"]);
  });
});
