import { describe, expect, it } from "vitest";
import { approachedLevel, arrivalWithin, fitApproach, missingAt } from "../../src/hold/approach.ts";
import { approachNight, pointsOf } from "./constructed.ts";

const undisturbed = new Uint8Array(2000);

describe("fitApproach", () => {
  it("recovers time constant, level and arrival of 20 -> 41 degC with 45 min", () => {
    const points = pointsOf(approachNight(45), { until: 600, resolution: 0.001 });
    const fit = fitApproach(points, { from: 10, to: 600 }, undisturbed)!;
    expect(Math.abs(fit.timeConstant / 45 - 1)).toBeLessThan(0.01);
    expect(approachedLevel(fit, 500)).toBeCloseTo(41, 2);
    // 45 ln(21 / 0.5) = 168.2 min.
    expect(Math.abs(arrivalWithin(fit, 0.5) - 45 * Math.log(42))).toBeLessThan(1.5);
    expect(missingAt(fit, arrivalWithin(fit, 0.5))).toBeCloseTo(0.5, 9);
  });

  it("leaves out what is marked as disturbed", () => {
    const course = approachNight(45);
    const dip = pointsOf((m) => course(m) - (m > 300 && m < 340 ? 10 : 0), { until: 600 });
    const marks = dip.minutes.map((m) => (m > 300 && m < 340 ? 1 : 0));
    const fit = fitApproach(dip, { from: 10, to: 600 }, Uint8Array.from(marks))!;
    expect(Math.abs(fit.timeConstant / 45 - 1)).toBeLessThan(0.02);
  });

  it("leaves the corner of a ramp unexplained", () => {
    const points = pointsOf((m) => Math.min(41, 30 + 0.3 * m), { until: 600 });
    const fit = fitApproach(points, { from: 0, to: 600 }, undisturbed);
    if (fit !== null) expect(fit.earlyResidual).toBeGreaterThan(0.02 * fit.amplitude);
  });

  it("is null for a few points and where nothing levels off", () => {
    expect(
      fitApproach(
        pointsOf(() => 41, { until: 5 }),
        { from: 0, to: 5 },
        undisturbed,
      ),
    ).toBeNull();
  });
});
