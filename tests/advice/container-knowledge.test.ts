import { describe, expect, it } from "vitest";
import { containerIn, containersOf } from "../../src/advice/container-knowledge.ts";
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
