import { describe, expect, it } from "vitest";
import type { DecidedSetUp } from "../../src/advice/advice-input.ts";
import { normalLevel } from "../../src/advice/tested-level.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer } from "../../src/thermometer/budget.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, settledTest } from "./constructed.ts";

// Constructed tests.
const decided = (hoursHeld: number, levels: readonly number[]): DecidedSetUp => {
  const thermometer = correctedThermometer(celsiusDifference(0), celsiusDifference(0.2));
  const tests = levels.map((level) => settledTest({ level, hoursHeld, thermometer }));
  return adviceInput({ requirements: [asked(36, 40, 36)], tests }).setUps[0]!;
};

describe("normalLevel", () => {
  it("is the mean of the tests with thermometer and run to run in quadrature", () => {
    // One run: 0.3 degC run to run (an assumption of the project); mean and display step of a flat
    // night add less than 0.004 degC. 1.959964: the normal's 97.5 % point, any table.
    const level = normalLevel(decided(36, [38]))!;
    expect(level.mean).toBeCloseTo(38, 2);
    const combined = Math.hypot(0.2, 0.3);
    expect(Math.abs(level.standardUncertainty - combined)).toBeLessThan(0.004);
    expect(level.high - level.mean).toBeCloseTo(1.959964 * level.standardUncertainty, 6);
    expect(level.mean - level.low).toBeCloseTo(1.959964 * level.standardUncertainty, 6);
    expect(level.degreesOfFreedom).toBe(Infinity);
  });

  it("leaves the hours not tested to the band, so that a short test has the same level", () => {
    const short = decided(8, [38]);
    expect(short.verdicts[0]!.uncertainty.map(({ source }) => source)).toContain(
      "hours not tested",
    );
    const level = normalLevel(short)!;
    expect(Math.abs(level.standardUncertainty - Math.hypot(0.2, 0.3))).toBeLessThan(0.01);
  });

  it("takes run to run of the set-up once, as measured by its tests", () => {
    const twice = decided(14, [37.8, 38.2]);
    // (2 x 0.3^2 / 2 + 2 x 0.2^2) / (2 + 1), and sqrt(1 + 1/2) for the next run about a mean of two.
    const scatter = Math.sqrt((0.09 + 0.08) / 3);
    const level = normalLevel(twice)!;
    expect(level.mean).toBeCloseTo(38, 2);
    const combined = Math.hypot(0.2, scatter * Math.sqrt(1.5));
    expect(Math.abs(level.standardUncertainty - combined)).toBeLessThan(0.004);
  });

  it("is unknown where no test settled", () => {
    expect(normalLevel({ ...decided(14, [38]), mean: null })).toBeNull();
  });
});
