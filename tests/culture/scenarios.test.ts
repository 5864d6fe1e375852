import { describe, expect, it } from "vitest";
import { drawScenarios, strengthLikelihoods } from "../../src/culture/scenarios.ts";
import { evidenceOf, swinging } from "./nights.ts";

const scenarioEvidenceOf = (hoursHeld: number, hold: (hour: number) => number) => {
  const { night } = evidenceOf({ hoursHeld, hold });
  return {
    hold: night.hold!,
    readings: night.holdReadings!,
    warmUpMinutes: 60,
    resolution: 0.01,
    roomRange: null,
  };
};

const scenariosOf = (hoursHeld: number, needed: number, hold: (hour: number) => number) =>
  drawScenarios(scenarioEvidenceOf(hoursHeld, hold), needed);

describe("drawScenarios", () => {
  it("agrees with the readings over the hours that were tested", () => {
    const { hours, paths } = scenariosOf(12, 12, (hour) => 40 + 0.3 * Math.sin(hour / 4));
    for (const path of paths) {
      hours.forEach((hour, i) => {
        if (hour < 11) expect(Math.abs(path[i]! - 40 - 0.3 * Math.sin(hour / 4))).toBeLessThan(0.2);
      });
    }
  });

  it("spreads out over the hours that were not", () => {
    const { hours, paths } = scenariosOf(9, 36, () => 40);
    const spreadAt = (index: number) => {
      const values = paths.map((path) => path[index]!);
      const middle = values.reduce((sum, value) => sum + value, 0) / values.length;
      return Math.sqrt(
        values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / values.length,
      );
    };
    const early = hours.findIndex((hour) => hour > 4);
    const late = hours.findIndex((hour) => hour > 20);
    expect(spreadAt(late)).toBeGreaterThan(3 * spreadAt(early));
  });

  it("keeps the swing in the fast part and out of the slow one", () => {
    const { fast, paths } = scenariosOf(12, 12, swinging(40, 0.8, 30));
    // Twelve equally likely values of a sine: the outermost stands at sin(pi (1/2 - 1/24)) = 0.991.
    expect(fast.values.at(-1)).toBeCloseTo(0.8 * 0.991, 1);
    for (const path of paths) {
      for (const value of path.subarray(2, -2)) expect(Math.abs(value - 40)).toBeLessThan(0.3);
    }
  });

  it("has nothing unseen to fear where everything was tested", () => {
    expect(scenariosOf(12, 10, () => 40).unseenUncertainty).toBe(0);
    expect(scenariosOf(6, 36, () => 40).unseenUncertainty).toBeGreaterThan(0.05);
  });
});

const wave = (hour: number): number => 40 + 0.8 * Math.sin((2 * Math.PI * hour) / 24);

describe("strengthLikelihoods", () => {
  it("let a test that saw a day without a wave calm the open hours of a short one", () => {
    const short = scenarioEvidenceOf(6, () => 40);
    const flatDay = strengthLikelihoods(scenarioEvidenceOf(36, () => 40));
    const wavyDay = strengthLikelihoods(scenarioEvidenceOf(36, wave));
    const unseen = (alsoSeen: readonly number[]) =>
      drawScenarios(short, 36, 0, alsoSeen).unseenUncertainty;
    expect(unseen(flatDay)).toBeLessThan(unseen([]));
    expect(unseen(wavyDay)).toBeGreaterThan(unseen([]));
  });
});
