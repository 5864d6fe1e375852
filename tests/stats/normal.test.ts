import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCdf, normalDensity, normalQuantile } from "../../src/stats/normal.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { normalDistribution } from "../reference/values/distributions.ts";

describeReferences(normalDistribution);

describe("normalCdf", () => {
  it("ends in 0 and 1", () => {
    expect([normalCdf(-Infinity), normalCdf(-60), normalCdf(60), normalCdf(Infinity)]).toEqual([
      0, 0, 1, 1,
    ]);
    expect(normalCdf(NaN)).toBeNaN();
  });
});

describe("normalDensity", () => {
  // 1/sqrt(2 pi e), by definition.
  it("is the bell", () => {
    expect(normalDensity(-1)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI * Math.E), 15);
    expect(normalDensity(50)).toBe(0);
  });
});

describe("normalQuantile", () => {
  it("has its ends and nothing beyond", () => {
    expect([normalQuantile(0), normalQuantile(0.5), normalQuantile(1)]).toEqual([
      -Infinity,
      0,
      Infinity,
    ]);
    expect(normalQuantile(-0.1)).toBeNaN();
    expect(normalQuantile(1.1)).toBeNaN();
  });

  it("undoes normalCdf", () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (z) => {
        // Above 0 the value 1 - tail keeps only 1e-16 absolute: at 5 that is 1e-10 in z.
        const allowed = z > 0 ? 1e-16 / normalDensity(z) + 1e-13 : 1e-13 * (1 + Math.abs(z));
        expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThanOrEqual(allowed);
      }),
    );
  });
});
