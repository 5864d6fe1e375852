import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effectiveDegreesOfFreedom } from "../../src/stats/effective-degrees-of-freedom.ts";
import { studentTQuantile } from "../../src/stats/student-t.ts";

const share = (standardUncertainty: number, degreesOfFreedom: number) => ({
  standardUncertainty,
  degreesOfFreedom,
});

describe("effectiveDegreesOfFreedom", () => {
  // JCGM 100:2008, G.4.1, worked example: relative uncertainties of three factors in percent with
  // 10, 5 and 15 repeats; printed 1.03 %, 19.0, 2.2 %. Unrounded by SciPy 1.17.1 and R 4.2.2.
  it("gives the worked example of JCGM 100", () => {
    const found = effectiveDegreesOfFreedom([share(0.25, 9), share(0.57, 4), share(0.82, 14)]);
    expect(found).toBeCloseTo(18.998743, 5);
    expect(Math.hypot(0.25, 0.57, 0.82)).toBeCloseTo(1.029466, 6);
    expect(studentTQuantile(0.975, Math.round(found))).toBeCloseTo(2.093024, 6);
    expect((studentTQuantile(0.975, found) * 1.03).toFixed(1)).toBe("2.2");
  });

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
