import { describe, expect, it } from "vitest";
import type { OffsetDistribution } from "../../src/culture/offset-distribution.ts";
import {
  requirementProbability,
  scenarioPlays,
  weightedProbability,
  type RequirementProbability,
} from "../../src/culture/probability.ts";
import type { Scenarios } from "../../src/culture/scenarios.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import { celsius, fraction, hours } from "../../src/quantity.ts";

const steady = (level: number, fast: readonly number[] = [0]): Scenarios => ({
  hours: Float64Array.of(1, 2),
  paths: [Float64Array.of(level, level)],
  fast: { values: Float64Array.from(fast), top: Math.max(...fast), degreesOfFreedom: Infinity },
  fastScales: Float64Array.of(1, 1),
  unseenUncertainty: 0,
});
const requirement = (low: number, high: number, ceiling: number | null = null): Requirement => ({
  culture: "window",
  name: "",
  low: celsius(low),
  high: celsius(high),
  ceiling: ceiling === null ? null : celsius(ceiling),
  hours: hours(24),
  share: fraction(0.95),
});
const probability = (
  scenarios: Scenarios,
  offset: OffsetDistribution,
  asked: Requirement,
): RequirementProbability => requirementProbability(scenarioPlays(scenarios, asked), offset);
const normal = (standardDeviation: number) => ({ halfWidth: 0, standardDeviation });

const metFor = (y: number, u: number, low: number, high: number) =>
  probability(steady(y), normal(u), requirement(low, high)).met;

describe("requirementProbability", () => {
  it("is the conformance probability of JCGM 106 for a hold that does not move", () => {
    // Constructed windows, recomputed with SciPy and R, 1e-6.
    expect(Math.abs(metFor(40.2, 0.6, 38, 43) - 0.999876)).toBeLessThan(1e-6);
    expect(Math.abs(metFor(42.4, 0.4, 38, 43) - 0.933193)).toBeLessThan(1e-6);
    expect(Math.abs(metFor(44.2, 0.3, 40, 44) - 0.252493)).toBeLessThan(1e-6);
  });

  it("gives a swing the room it takes: half of the window's play is gone", () => {
    // A sine of amplitude 1 spends 5 % of its time above sin(0.45 pi) = 0.98769 (arcsine law), so a
    // window of +-2 leaves the offset +-1.01231 before one side loses 5 % (200 values, so 0.002).
    const sine = Array.from({ length: 200 }, (_, i) => Math.sin(Math.PI * ((i + 0.5) / 200 - 0.5)));
    const { met } = probability(
      steady(40, sine),
      { halfWidth: 2, standardDeviation: 0 },
      requirement(38, 42),
    );
    expect(Math.abs(met - 1.01231 / 2)).toBeLessThan(0.002);
  });

  it("heeds the ceiling and says how likely it is passed", () => {
    const found = probability(steady(40, [-1, 1]), normal(0.5), requirement(36, 44, 41.5));
    // Peak 41, so passed with probability 1 - Phi(1) = 0.158655.
    expect(found.ceilingPassed).toBeCloseTo(0.158655, 5);
    expect(found.met).toBeCloseTo(1 - 0.158655, 5);
  });

  it("averages over scenarios", () => {
    const scenarios = { ...steady(40), paths: [Float64Array.of(40, 40), Float64Array.of(50, 50)] };
    const { met } = probability(scenarios, normal(0.01), requirement(38, 42));
    expect(met).toBeCloseTo(0.5, 9);
  });
});

describe("weightedProbability", () => {
  const wanted = requirement(38, 42, 41.5);
  const playsAt = (level: number) => scenarioPlays(steady(level), wanted);

  it("is the weighted mean over the tests, worked by hand", () => {
    // Levels 40 and 50: certainly inside and certainly outside, above the ceiling.
    const parts = [
      { weight: 0.75, plays: playsAt(40) },
      { weight: 0.25, plays: playsAt(50) },
    ];
    expect(weightedProbability(parts, normal(0.01))).toEqual({
      met: expect.closeTo(0.75, 9),
      ceilingPassed: expect.closeTo(0.25, 9),
    });
  });

  it("is exactly the plain one for a single test", () => {
    const plays = playsAt(41.2);
    const plain = requirementProbability(plays, normal(0.3));
    expect(weightedProbability([{ weight: 1, plays }], normal(0.3))).toEqual(plain);
  });
});
