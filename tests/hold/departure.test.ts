import { describe, expect, it } from "vitest";
import { fitDeparture } from "../../src/hold/departure.ts";
import { stepResponse } from "./step-response.ts";
import { pointsOf } from "./constructed.ts";

const level = (): number => 41;
const window = { from: 0, to: 400 };

describe("fitDeparture", () => {
  it.each([
    [200, 0, 1],
    [300, 30, 3],
    [600, 60, 5],
  ])("finds the onset of cooling with lags %d and %d min to %d min", (slow, fast, within) => {
    const course = (m: number): number =>
      41 - 20 * (m < 150 ? 0 : stepResponse(m - 150, slow, fast));
    const points = pointsOf(course, { until: 400, noise: 0.05, resolution: 0.01 });
    const fit = fitDeparture(points, level, window, { from: 0, to: 300 });
    expect(Math.abs(fit!.onset - 150)).toBeLessThanOrEqual(within);
    expect(fit!.amplitude).toBeLessThan(0);
  });

  it("needs four points", () => {
    const points = pointsOf(() => 40, { until: 2 });
    expect(fitDeparture(points, level, window, window)).toBeNull();
  });
});
