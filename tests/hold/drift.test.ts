import { describe, expect, it } from "vitest";
import { findDrift } from "../../src/hold/drift.ts";
import { evenSeries } from "../../src/hold/even-grid.ts";
import { findSwing } from "../../src/hold/swing.ts";
import { autoregressive, seededNormal } from "../stats/seeded-noise.ts";
import { logged, sawtooth } from "./constructed.ts";

const driftOf = (log: { minutes: Float64Array; celsius: Float64Array }) => {
  const series = evenSeries(log);
  const readings = { ...log, weights: log.minutes.map(() => 1) };
  return findDrift(readings, series, findSwing(series));
};

describe("findDrift", () => {
  it("is exact on a straight course", () => {
    const drift = driftOf(logged((m) => 40 + (0.12 * m) / 60, { until: 480, resolution: 1e-9 }));
    expect(drift.perHour).toBeCloseTo(0.12, 6);
    expect(drift.robustPerHour).toBeCloseTo(0.12, 6);
    expect(drift.high - drift.low).toBeLessThan(1e-6);
  });

  it("weighs by time: many readings early do not pull the line", () => {
    const minutes = Float64Array.of(0, 1, 2, 3, 4, 5, 300, 600);
    const celsius = minutes.map((m) => 40 + m / 600);
    const weights = Float64Array.of(0.5, 1, 1, 1, 1, 148, 297.5, 150);
    const drift = findDrift({ minutes, celsius, weights }, evenSeries({ minutes, celsius }), null);
    expect(drift.perHour).toBeCloseTo(0.1, 9);
  });

  it("is not tilted by a swing cut off in mid-cycle", () => {
    const drift = driftOf(logged((m) => 41 + sawtooth(80, 4, 0.5)(m + 17), { until: 430 }));
    expect(Math.abs(drift.perHour)).toBeLessThan(0.05);
  });

  it("covers the true slope about as often as it says under red noise", () => {
    let covered = 0;
    for (let seed = 1; seed <= 120; seed += 1) {
      const wander = autoregressive(601, Math.exp(-1 / 20), seededNormal(1000 + seed));
      const minutes = wander.map((_, index) => index);
      const drift = driftOf({ minutes, celsius: wander.map((v, m) => 41 + 0.1 * v + m / 1000) });
      if (drift.low <= 0.06 && drift.high >= 0.06) covered += 1;
    }
    // 95 % wanted, 114 of 120; 107 is three standard deviations of chance below.
    expect(covered).toBeGreaterThanOrEqual(107);
  });
});
