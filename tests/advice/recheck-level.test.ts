import { describe, expect, it } from "vitest";
import { differenceOf, levelDifference, type TestPair } from "../../src/advice/recheck-level.ts";
import { fitResponse, type HeldTest } from "../../src/advice/response.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer } from "../../src/thermometer/budget.ts";
import { asked } from "../culture/nights.ts";
import { createRandom } from "../simulator/random.ts";
import { adviceInput, cooker, settledTest } from "./constructed.ts";

const thermometer = correctedThermometer(celsiusDifference(0), celsiusDifference(0.15));
const template = settledTest({ level: 38, thermometer, hoursHeld: 10, stepMinutes: 5 });
/** The same night at another level: the hold's own figures do not depend on it. */
const at = (id: string, level: number): HeldTest => ({
  ...template,
  id,
  settled: { ...template.settled, level },
});
const pairOf = (levels: readonly number[], sharedThermometer = true): TestPair => {
  const tests = levels.map((level, index) => at(`${index}`, level));
  const input = adviceInput({
    requirements: [asked(37, 39, 12)],
    tests: tests.slice(0, -1),
    setUps: [],
  });
  return {
    baseline: tests[0]!,
    newest: tests.at(-1)!,
    sharedThermometer,
    earlier: levels.slice(0, -1),
    before: fitResponse(cooker(), input),
  };
};

describe("differenceOf", () => {
  it("is newest minus baseline, doubts as squares, Student's t of their effective degrees of freedom", () => {
    // JCGM 100:2008, G.4.1: with 0.3 (9 degrees of freedom) and 0.4 known, 9 x 0.5^4 / 0.3^4 = 69.44.
    const found = differenceOf(38, 38.9, [
      { standardUncertainty: 0.3, degreesOfFreedom: 9 },
      { standardUncertainty: 0.4, degreesOfFreedom: Infinity },
    ]);
    expect(found).toMatchObject({ baseline: 38, now: 38.9, standardUncertainty: 0.5 });
    expect(found.difference).toBeCloseTo(0.9, 12);
    expect(found.degreesOfFreedom).toBeCloseTo(69.4444, 3);
    // t 0.975 with 69.4444 degrees of freedom: 1.9947177 (SciPy 1.17.1, stats.t.ppf).
    expect(found.high - found.difference).toBeCloseTo(0.5 * 1.9947177, 5);
  });
});

describe("levelDifference", () => {
  it("leaves out a thermometer that served both, and counts two of them twice", () => {
    const shared = levelDifference(pairOf([38, 38.2]));
    const changed = levelDifference(pairOf([38, 38.2], false));
    expect(changed.standardUncertainty ** 2 - shared.standardUncertainty ** 2).toBeCloseTo(
      2 * 0.15 ** 2,
      9,
    );
  });

  it("begins with the scatter that a verdict assumes from run to run", () => {
    // Two single runs of 0.3 / sqrt(2) each differ by 0.3; the constructed holds leave next to nothing open.
    const { standardUncertainty } = levelDifference(pairOf([38, 38]));
    expect(Math.abs(standardUncertainty - 0.3)).toBeLessThan(0.03);
  });

  it("is surer once repeats have shown how far runs scatter", () => {
    const few = levelDifference(pairOf([38, 38]));
    const many = levelDifference(pairOf([38, 38.02, 37.98, 38.01, 37.99, 38]));
    expect(many.standardUncertainty).toBeLessThan(few.standardUncertainty);
    expect(many.degreesOfFreedom).toBeGreaterThan(few.degreesOfFreedom);
  });

  it("reckons with the room of an appliance that follows it", () => {
    const pair = pairOf([38, 38]);
    const warmer = { mean: 29, standardDeviation: 0.3 };
    const newest = { ...pair.newest, settled: { ...pair.newest.settled, room: warmer } };
    expect(levelDifference({ ...pair, newest }).standardUncertainty).toBeGreaterThan(
      levelDifference(pair).standardUncertainty,
    );
  });

  /** Runs that scatter by what kitchens show; 2,000 pairs each: 0.5 % is one standard deviation at 5 %. */
  const random = createRandom(20261125, "recheck");
  const share = (moveInUncertainties: number, earlier: number): number => {
    let moved = 0;
    const draws = 2000;
    for (let draw = 0; draw < draws; draw += 1) {
      const scatter = Math.exp(random.normal(Math.log(0.15), 0.4));
      const before = Array.from({ length: earlier }, () => 38 + random.normal(0, scatter));
      const still = levelDifference(pairOf([...before, 38]));
      const expanded = (still.high - still.low) / 2;
      const now = 38 + moveInUncertainties * expanded + random.normal(0, scatter);
      const found = levelDifference(pairOf([...before, now]));
      moved += Number(found.low > 0 || found.high < 0);
    }
    return moved / draws;
  };

  it.each([1, 2, 4])("calls at most 5 in 100 of the unmoved moved, after %i tests", (earlier) => {
    expect(share(0, earlier)).toBeLessThanOrEqual(0.05 + 3 * 0.005);
  });

  it.each([1, 2, 4])(
    "finds 90 in 100 that moved by twice the stated uncertainty, after %i",
    (earlier) => {
      expect(share(2, earlier)).toBeGreaterThanOrEqual(0.9);
    },
  );
});
