import { describe, expect, it } from "vitest";
import { expectedLevel, expectedRun } from "../../src/advice/expected.ts";
import { fitResponse } from "../../src/advice/response.ts";
import { studentTQuantile } from "../../src/stats/student-t.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, cooker, settledTest, step } from "./constructed.ts";

describe("expectedRun", () => {
  const tests = [
    settledTest({ id: "a", level: 38, setting: step(38) }),
    settledTest({ id: "b", level: 40, setting: step(40) }),
  ];
  const input = adviceInput({ requirements: [asked(37, 39, 12)], tests });
  const fit = fitResponse(cooker(), input);
  const setUp = { setting: step(39), container: "jars" };

  it("lies between two tests, as its setting does", () => {
    expect(Math.abs(expectedRun(fit, setUp).mean - 39)).toBeLessThan(0.1);
  });

  const room = (standardDeviation: number): number =>
    expectedRun(fit, setUp, { mean: 21, standardDeviation }).room;

  it("takes the room's doubt through what the room does to the food", () => {
    expect(room(0)).toBe(0);
    expect(room(2)).toBeCloseTo(2 * room(1), 12);
    // A thermostat's 0.05 (assumed) and the jars' share lost, 0.02 (assumed), hardly moved by two tests.
    expect(room(1)).toBeGreaterThan(0.03);
    expect(room(1)).toBeLessThan(0.12);
  });
});

describe("expectedLevel", () => {
  it("adds the doubts as squares and takes Student's t of their effective degrees of freedom", () => {
    // JCGM 100:2008, G.4.1: u^4 / (scale^4 / 9).
    const found = expectedLevel({
      mean: 38,
      scale: 0.3,
      degreesOfFreedom: 9,
      room: 0.2,
      thermometer: { standardUncertainty: 0.1, halfWidth: null },
    });
    const u = Math.sqrt(0.09 + 0.04 + 0.01);
    const degreesOfFreedom = (9 * u ** 4) / 0.3 ** 4;
    expect(found.standardUncertainty).toBeCloseTo(u, 12);
    expect(found.degreesOfFreedom).toBeCloseTo(degreesOfFreedom, 9);
    expect(found.high - 38).toBeCloseTo(studentTQuantile(0.975, degreesOfFreedom) * u, 9);
    expect(38 - found.low).toBeCloseTo(found.high - 38, 9);
  });
});
