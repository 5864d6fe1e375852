import { describe, expect, it } from "vitest";
import { evenSeries } from "../../src/hold/even-grid.ts";
import { meanUncertaintyOf } from "../../src/hold/mean-uncertainty.ts";
import { findSwing } from "../../src/hold/swing.ts";
import { autoregressive, seededNormal } from "../stats/seeded-noise.ts";
import { logged, sawtooth } from "./constructed.ts";

describe("meanUncertaintyOf", () => {
  it("is s / sqrt(n) for independent readings", () => {
    const series = evenSeries(logged(() => 41, { until: 2000, noise: 0.2, resolution: 1e-6 }));
    const { meanUncertainty } = meanUncertaintyOf(series, null, 2001);
    // 0.2 / sqrt(2001) = 0.00447; the integrated time of white noise is estimated within some 20 %.
    expect(Math.abs(meanUncertainty / (0.2 / Math.sqrt(2001)) - 1)).toBeLessThan(0.25);
  });

  it("counts autocorrelated readings as n (1 - r)/(1 + r)", () => {
    // Zwiers & von Storch 1995: n 1440, r 0.95 gives 36.9. Mean over 40 series, each uncertain by about a third.
    let sum = 0;
    for (let seed = 1; seed <= 40; seed += 1) {
      const values = autoregressive(1440, 0.95, seededNormal(seed));
      sum += meanUncertaintyOf({ start: 0, step: 1, values }, null, 1440).effectiveReadings;
    }
    expect(Math.abs(sum / 40 / 36.923077 - 1)).toBeLessThan(0.25);
  });

  it("knows the mean of a regular swing better than its height suggests", () => {
    const series = evenSeries(logged((m) => 41 + sawtooth(30, 2)(m), { until: 600, noise: 0.05 }));
    const swing = findSwing(series);
    const { meanUncertainty } = meanUncertaintyOf(series, swing, 601);
    expect(swing).not.toBeNull();
    expect(meanUncertainty).toBeLessThan(0.03);
  });

  it("is zero where all readings are the same", () => {
    const series = evenSeries(logged(() => 41, { until: 100 }));
    expect(meanUncertaintyOf(series, null, 101)).toEqual({
      meanUncertainty: 0,
      effectiveReadings: 101,
    });
  });
});
