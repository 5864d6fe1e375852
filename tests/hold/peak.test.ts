import { describe, expect, it } from "vitest";
import { findPeak } from "../../src/hold/peak.ts";
import { pointsOf } from "./constructed.ts";

describe("findPeak", () => {
  it("sees an overshoot of a quarter of an hour in full", () => {
    const points = pointsOf((m) => (m >= 100 && m < 115 ? 45 : 41), { until: 400 });
    expect(findPeak(points, 0, 400)).toBeCloseTo(45, 9);
  });

  it("does not take one stray reading or the noise for a peak", () => {
    const stray = pointsOf((m) => (m === 200 ? 60 : 41), { until: 400 });
    expect(findPeak(stray, 0, 400)).toBeCloseTo(41, 9);
    const noisy = pointsOf(() => 41, { until: 1000, noise: 0.15 });
    // The mean of seven has a standard deviation of 0.06; the largest of a thousand about 3.2 of them.
    expect(findPeak(noisy, 0, 1000)).toBeLessThan(41.3);
  });

  it("takes readings far apart as they stand, and says when there are none", () => {
    const points = pointsOf((m) => (m === 120 ? 44 : 41), { until: 480, step: 60 });
    expect(findPeak(points, 0, 480)).toBe(44);
    expect(findPeak(points, 500, 600)).toBeNull();
  });
});
