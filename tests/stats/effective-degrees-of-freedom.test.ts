import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effectiveDegreesOfFreedom } from "../../src/stats/effective-degrees-of-freedom.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { effectiveDegrees } from "../reference/values/uncertainty.ts";

describeReferences(effectiveDegrees);

const share = (standardUncertainty: number, degreesOfFreedom: number) => ({
  standardUncertainty,
  degreesOfFreedom,
});

describe("effectiveDegreesOfFreedom", () => {
  it("passes one share's degrees of freedom through, and exact ones do not count", () => {
    expect(effectiveDegreesOfFreedom([share(0.2, 3)])).toBeCloseTo(3, 12);
    expect(effectiveDegreesOfFreedom([share(0.2, 3), share(0, 1)])).toBeCloseTo(3, 12);
    expect(effectiveDegreesOfFreedom([share(0.2, Infinity)])).toBe(Infinity);
    expect(effectiveDegreesOfFreedom([share(0, 2)])).toBe(Infinity);
    expect(effectiveDegreesOfFreedom([])).toBe(Infinity);
  });

  it("lies between the least and the sum of the degrees of freedom", () => {
    const shares = fc.array(
      fc.record({
        standardUncertainty: fc.double({ min: 1e-120, max: 1e3, noNaN: true }),
        degreesOfFreedom: fc.integer({ min: 1, max: 60 }),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(shares, (list) => {
        const degrees = list.map((one) => one.degreesOfFreedom);
        const found = effectiveDegreesOfFreedom(list);
        // One part in 10^9 for rounding.
        expect(found).toBeGreaterThanOrEqual(Math.min(...degrees) * (1 - 1e-9));
        expect(found).toBeLessThanOrEqual(degrees.reduce((a, b) => a + b, 0) * (1 + 1e-9));
      }),
    );
  });
});
