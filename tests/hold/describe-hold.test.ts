import { describe, expect, it } from "vitest";
import { describeHold } from "../../src/hold/describe-hold.ts";
import { logged, sawtooth } from "./constructed.ts";

describe("describeHold", () => {
  it("describes a swing of one degree about 41", () => {
    const log = logged((m) => 41 + sawtooth(30, 1, 0.5)(m), { until: 600, resolution: 0.001 });
    const weights = log.minutes.map((_, index) => (index === 0 || index === 600 ? 0.5 : 1));
    const hold = describeHold({ ...log, weights }, 0, 600, { share: 0.95 });
    expect(hold.hours).toBeCloseTo(10, 9);
    expect(hold.readings).toBe(601);
    expect(hold.mean).toBeCloseTo(41, 3);
    // Uniform over 40.5..41.5: standard deviation 1/sqrt(12), central 95 % 40.525..41.475; a minute is 0.067 degC.
    expect(hold.standardDeviation).toBeCloseTo(1 / Math.sqrt(12), 2);
    expect(Math.abs(hold.band.low - 40.525)).toBeLessThan(0.035);
    expect(Math.abs(hold.band.high - 41.475)).toBeLessThan(0.035);
    expect(Math.abs(hold.swing!.periodMinutes - 30)).toBeLessThan(0.5);
    expect(hold.hourMeans.high - hold.hourMeans.low).toBeLessThan(0.02);
    expect(hold.drift.low).toBeLessThanOrEqual(hold.drift.perHour);
    expect(hold.drift.high).toBeGreaterThanOrEqual(hold.drift.perHour);
  });
});
