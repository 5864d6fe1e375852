import { describe, expect, it } from "vitest";
import { describeWarmUp } from "../../src/hold/warm-up.ts";
import { pointsOf, rampNight } from "./constructed.ts";

const firstOrder = (m: number): number => 41 - 19 * Math.exp(-m / 45);

const laggingRamp = (m: number): number => 22 + 0.2 * (m - 15 + 15 * Math.exp(-m / 15));

describe("describeWarmUp", () => {
  it("recovers the time constant of 22 -> 41 degC with 45 min within its uncertainty", () => {
    const points = pointsOf(firstOrder, { until: 300, noise: 0.05, resolution: 0.001 });
    const warmUp = describeWarmUp(points, 0, 163.691377, 0.05)!;
    expect(warmUp.minutesToHold).toBeCloseTo(163.691377, 9);
    const off = Math.abs(warmUp.timeConstantMinutes! - 45);
    expect(off).toBeLessThan(4 * warmUp.timeConstantUncertainty!);
    expect(warmUp.timeConstantUncertainty!).toBeLessThan(1);
  });

  it("gives no time constant for a ramp, a curve under a lagging sensor or few points", () => {
    expect(
      describeWarmUp(pointsOf(rampNight, { until: 300 }), 60, 112, 0)!.timeConstantMinutes,
    ).toBeNull();
    // Sensor lag on a ramp of 0.2 K/min, 15 min: T = 22 + r (t - tau + tau e^(-t/tau)).
    expect(
      describeWarmUp(pointsOf(laggingRamp, { until: 90 }), 0, 90, 0)!.timeConstantMinutes,
    ).toBeNull();
    expect(
      describeWarmUp(pointsOf(rampNight, { until: 300, step: 30 }), 60, 112, 0)!
        .timeConstantMinutes,
    ).toBeNull();
  });

  it("is null without a rise", () => {
    expect(
      describeWarmUp(
        pointsOf(() => 41, { until: 60 }),
        null,
        0,
        0,
      ),
    ).toBeNull();
  });
});
