import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { theilSen } from "../../src/stats/theil-sen.ts";
import { seededNormal } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { robustSlope } from "../reference/values/robust.ts";

describeReferences(robustSlope);

describe("theilSen", () => {
  it("says NaN where no two x differ", () => {
    expect(theilSen([3, 3], [1, 2])).toEqual({ slope: NaN, intercept: NaN, low: NaN, high: NaN });
    expect(theilSen([], []).slope).toBeNaN();
  });

  // Constructed: 0.02 per hour under noise 0.1, 40,000 readings of which 5 % are far off.
  // A least-squares slope of such noise has standard deviation 0.1 sqrt(12/40000)/11.1 = 1.6e-4.
  it("thins long series and stays robust", () => {
    const normal = seededNormal(7);
    const hours = Float64Array.from({ length: 40_000 }, (_, i) => i / 3600);
    const values = hours.map((h, i) => 40 + 0.02 * h + 0.1 * normal() + (i % 20 === 0 ? 30 : 0));
    const fit = theilSen(hours, values);
    expect(Math.abs(fit.slope - 0.02)).toBeLessThan(4 * 1.6e-4 * 1.25);
    expect(fit.high - fit.low).toBeLessThan(0.002);
  });

  // Constructed: readings printed to 0.1 degC that drift by 0.15 in ten hours.
  it("sees through rounding in long series", () => {
    const normal = seededNormal(17);
    const hours = Float64Array.from({ length: 36_000 }, (_, i) => i / 3600);
    const rounded = hours.map((h) => Math.round((41 + 0.015 * h + 0.05 * normal()) * 10) / 10);
    expect(Math.abs(theilSen(hours, rounded).slope - 0.015)).toBeLessThan(0.003);
  });

  // Constructed: coverage of the 95 % interval on independent normal noise, 1000
  // series; binomial standard deviation 0.7 %, three of them allowed.
  it("covers the true slope as often as it claims", () => {
    const normal = seededNormal(11);
    const x = Array.from({ length: 25 }, (_, i) => i);
    let covered = 0;
    for (let run = 0; run < 1000; run++) {
      const { low, high } = theilSen(
        x,
        x.map(() => normal()),
      );
      if (low <= 0 && high >= 0) covered++;
    }
    expect(covered / 1000).toBeGreaterThan(0.929);
    expect(covered / 1000).toBeLessThan(0.975);
  });

  it("follows y to a y + b x + c (equivariance)", () => {
    const y = fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 3, maxLength: 40 });
    const factor = fc.integer({ min: 1, max: 9 });
    fc.assert(
      fc.property(y, factor, factor, (values, a, b) => {
        const x = values.map((_, i) => i);
        const plain = theilSen(x, values);
        const changed = theilSen(
          x,
          values.map((value, i) => a * value + b * i + 7),
        );
        expect(changed.slope).toBeCloseTo(a * plain.slope + b, 9);
        // The ties that set the interval's width change with a tilt, so it is checked without one.
        const scaled = theilSen(
          x,
          values.map((value) => a * value),
        );
        expect(scaled.low).toBeCloseTo(a * plain.low, 9);
        expect(scaled.high).toBeCloseTo(a * plain.high, 9);
      }),
    );
  });
});
