import { describe, expect, it } from "vitest";
import { drawScenarios } from "../../src/culture/scenarios.ts";
import { evidenceOf, swinging } from "./nights.ts";

const scenariosOf = (hoursHeld: number, needed: number, hold: (hour: number) => number) => {
  const { night } = evidenceOf({ hoursHeld, hold });
  const evidence = {
    hold: night.hold!,
    readings: night.holdReadings!,
    warmUpMinutes: 60,
    resolution: 0.01,
    roomRange: null,
  };
  return drawScenarios(evidence, needed);
};

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
