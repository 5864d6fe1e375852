import { describe, expect, it } from "vitest";
import { bathAround, containerIn, containersOf } from "../../src/advice/container-knowledge.ts";
import { lagPrior, lostSharePrior } from "../../src/advice/response-prior.ts";
import type { ContainerResponse } from "../../src/container/container-response.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, basin, failedTest, jars, settledTest } from "./constructed.ts";

// Constructed figures; the weighted means are worked by hand.
const measured = (lost: number, lostUncertainty: number, lag: number): ContainerResponse => ({
  offset: { value: 20 * lost, standardUncertainty: 0.1 },
  shareLost: { value: lost, standardUncertainty: lostUncertainty },
  lagMinutes: { value: lag, standardUncertainty: 1 },
  room: { mean: 20, from: "measured" },
});
const pair = (appliance: string, response: ContainerResponse | null) =>
  settledTest({ id: `pair in ${appliance}`, appliance, level: 38, response });

describe("containerIn", () => {
  it("is the assumption for how it stands where nothing was measured", () => {
    const found = containerIn(jars, "cooker", [pair("cooker", null), failedTest("dead")]);
    const prior = lostSharePrior(jars);
    expect(found.shareLost).toEqual({
      value: prior.mean,
      standardUncertainty: expect.closeTo(prior.standardDeviation, 12),
      from: "assumed",
      testIds: [],
    });
    expect(found.lagMinutes.value).toBeCloseTo(lagPrior(jars).mean, 12);
  });

  it("weighs the assumption and each measurement by their variances", () => {
    const prior = lostSharePrior(jars);
    const found = containerIn(jars, "cooker", [pair("cooker", measured(0.04, 0.003, 15))]);
    // Own uncertainty and 15 % from test to test: hypot(0.003, 0.006).
    const variance = 0.003 ** 2 + 0.006 ** 2;
    const weight = 1 / variance / (1 / variance + 1 / prior.standardDeviation ** 2);
    expect(found.shareLost.value).toBeCloseTo(weight * 0.04 + (1 - weight) * prior.mean, 12);
    expect(found.shareLost.standardUncertainty).toBeCloseTo(
      1 / Math.sqrt(1 / variance + 1 / prior.standardDeviation ** 2),
      12,
    );
    expect(found.shareLost).toMatchObject({ from: "measured", testIds: ["pair in cooker"] });
  });

  it("trusts what was measured in another appliance less, and other containers' tests not at all", () => {
    const tests = [pair("bath", measured(0.04, 0.003, 15))];
    const here = containerIn(jars, "bath", tests).shareLost;
    const there = containerIn(jars, "cooker", tests).shareLost;
    expect(there.standardUncertainty).toBeGreaterThan(here.standardUncertainty);
    expect(Math.abs(there.value - lostSharePrior(jars).mean)).toBeLessThan(
      Math.abs(here.value - lostSharePrior(jars).mean),
    );
    expect(containerIn(basin, "bath", tests).shareLost.from).toBe("assumed");
  });

  it("doubts what another appliance does once, however many tests were made in it", () => {
    const tests = Array.from({ length: 50 }, () => pair("bath", measured(0.04, 0.003, 15)));
    const { standardUncertainty } = containerIn(jars, "cooker", tests).shareLost;
    // Half of 0.04 is left open by any number of them; the assumption alone knows the rest.
    const prior = lostSharePrior(jars).standardDeviation;
    expect(standardUncertainty).toBeGreaterThan(1 / Math.sqrt(1 / 0.02 ** 2 + 1 / prior ** 2));
  });

  it("takes two tests in another appliance for what they say together, then doubts it once", () => {
    const prior = lostSharePrior(jars);
    const tests = [
      pair("bath", measured(0.04, 0.003, 15)),
      { ...pair("bath", measured(0.02, 0.003, 15)), id: "another" },
    ];
    // Own uncertainty and 15 % from test to test; their weighted mean; half of that for the other appliance.
    const weights = [0.003 ** 2 + 0.006 ** 2, 0.003 ** 2 + 0.003 ** 2].map((one) => 1 / one);
    const mean = (0.04 * weights[0]! + 0.02 * weights[1]!) / (weights[0]! + weights[1]!);
    const carried = 1 / (1 / (weights[0]! + weights[1]!) + (0.5 * mean) ** 2);
    const assumed = 1 / prior.standardDeviation ** 2;
    const { value } = containerIn(jars, "cooker", tests).shareLost;
    expect(value).toBeCloseTo((mean * carried + prior.mean * assumed) / (carried + assumed), 12);
  });

  it("stays a number where a test measured nothing lost without any doubt", () => {
    const exact = { ...measured(0, 0, 0), lagMinutes: { value: 0, standardUncertainty: 0 } };
    const { shareLost, lagMinutes } = containerIn(jars, "cooker", [pair("cooker", exact)]);
    for (const { value, standardUncertainty } of [shareLost, lagMinutes]) {
      expect(Number.isFinite(value)).toBe(true);
      expect(standardUncertainty).toBeGreaterThan(0);
    }
  });

  it("takes a lag where the share lost could not be told", () => {
    const roomless = { ...measured(0, 1, 20), shareLost: null, room: null };
    const found = containerIn(jars, "cooker", [pair("cooker", roomless)]);
    expect(found.shareLost.from).toBe("assumed");
    expect(found.lagMinutes.from).toBe("measured");
  });
});

describe("containersOf", () => {
  it("lists the kitchen's containers with all tests alike", () => {
    const found = containersOf(
      adviceInput({
        requirements: [asked(37, 39, 12)],
        containers: [jars, basin],
        tests: [pair("bath", measured(0.03, 0.004, 12)), pair("cooker", measured(0.05, 0.004, 18))],
      }),
    );
    expect(found.map(({ container }) => container)).toEqual(["jars", "basin"]);
    expect(found[0]!.shareLost.testIds).toEqual(["pair in bath", "pair in cooker"]);
  });
});

describe("bathAround", () => {
  it("is the bath from which the food stands off", () => {
    // 40 in a room of 20, a twentieth lost: the food stands at 39.
    const known = containerIn(jars, "cooker", [pair("cooker", measured(0.05, 0.001, 15))]);
    const shareLost = { ...known.shareLost, value: 0.05 };
    expect(bathAround(39, 20, { ...known, shareLost })).toBeCloseTo(40, 12);
    expect(bathAround(39, 20, { ...known, shareLost: { ...shareLost, value: -0.01 } })).toBe(39);
  });
});
