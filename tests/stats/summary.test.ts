import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compensatedSum, highest, mean, standardDeviation } from "../../src/stats/summary.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { univariate } from "../reference/values/univariate.ts";

describeReferences(univariate);

describe("mean and standard deviation", () => {
  // Constructed: a million equal readings have that reading as their mean, which
  // plain addition misses from the twelfth digit on.
  it("loses nothing over a long series", () => {
    expect(mean(new Float64Array(1_000_000).fill(40.1))).toBe(40.1);
    expect(standardDeviation(new Float64Array(1_000_000).fill(40.1))).toBeLessThan(1e-14);
  });

  it("gives NaN where there is nothing to describe", () => {
    expect(mean([])).toBeNaN();
    expect(standardDeviation([40])).toBeNaN();
    expect(highest([])).toBe(-Infinity);
  });
});

describe("compensatedSum", () => {
  // Constructed: the small terms are lost by plain addition (2 by arithmetic).
  it("keeps terms that plain addition loses", () => {
    expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
  });
});

describe("properties", () => {
  const readings = fc.array(fc.integer({ min: -2000, max: 12000 }), {
    minLength: 2,
    maxLength: 200,
  });
  it("the deviation neither sees a shift nor an order", () => {
    fc.assert(
      fc.property(readings, (integers) => {
        const values = integers.map((value) => value / 100);
        const moved = integers.map((value) => 273.15 + value / 100).toReversed();
        // Rounding of the shifted values: 300 times 1e-16, against deviations down to 0.
        expect(standardDeviation(moved)).toBeCloseTo(standardDeviation(values), 9);
      }),
    );
  });
});
