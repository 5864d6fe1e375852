import { describe, expect, it } from "vitest";
import { findLevel, levelOfApproach } from "../../src/hold/find-level.ts";
import { expectedAt, levelAt, steepestSlope } from "../../src/hold/level.ts";
import { pointsOf, sawtooth } from "./constructed.ts";

const whole = { from: 0, to: 600 };
const none = new Uint8Array(700);

describe("findLevel", () => {
  it("gives level and envelope of a swing", () => {
    const level = findLevel(
      pointsOf((m) => 41 + sawtooth(30, 2, 0.5)(m), { until: 600 }),
      whole,
      none,
    )!;
    // A block of 100 min holds no whole number of cycles: its median is off by a few hundredths.
    expect(Math.abs(levelAt(level, 300) - 41)).toBeLessThan(0.15);
    // Averaging three points cuts the corners by at most a minute's change, 0.13 degC.
    expect(Math.abs(level.high - level.low - 2)).toBeLessThan(0.3);
  });

  it("is not moved by a lid lifted or a power cut of an hour", () => {
    const level = findLevel(
      pointsOf((m) => (m > 250 && m < 310 ? 35 : 41), { until: 600 }),
      whole,
      none,
    )!;
    expect(levelAt(level, 300)).toBeCloseTo(41, 9);
    expect(level.low).toBeCloseTo(0, 9);
  });

  it("carries a drift that both halves agree on", () => {
    const level = findLevel(
      pointsOf((m) => 42 - 0.1 * (m / 60), { until: 600 }),
      whole,
      none,
    )!;
    expect(level.slope * 60).toBeCloseTo(-0.1, 2);
    expect(steepestSlope(level, 0, 600) * 60).toBeCloseTo(0.1, 2);
  });

  it("does not take one half's movement for a drift", () => {
    const level = findLevel(
      pointsOf((m) => 41 + Math.max(0, m - 400) / 300, { until: 600 }),
      whole,
      none,
    )!;
    expect(Math.abs(level.slope * 60)).toBeLessThan(0.03);
  });

  it("is null for fewer than three points", () => {
    expect(
      findLevel(
        pointsOf(() => 41, { until: 1 }),
        whole,
        none,
      ),
    ).toBeNull();
  });
});

describe("levelOfApproach", () => {
  it("expects the curve and calls the asymptote the level", () => {
    const approach = {
      from: 0,
      timeConstant: 60,
      amplitude: 10,
      intercept: 41,
      slope: 0,
      bend: 0,
      earlyResidual: 0,
      lateResidual: 0,
    };
    const points = pointsOf((m) => 41 - 10 * Math.exp(-m / 60), { until: 600 });
    const level = levelOfApproach(points, whole, none, approach);
    expect(levelAt(level, 60)).toBe(41);
    expect(expectedAt(level, 60)).toBeCloseTo(41 - 10 / Math.E, 9);
    expect(level.high - level.low).toBeLessThan(0.02);
  });
});
