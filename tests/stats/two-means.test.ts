import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { differenceOfMeans } from "../../src/stats/two-means.ts";
import type { Estimate } from "../../src/stats/two-means.ts";

/** A sample's mean with its standard error, in the plain way. */
const estimateOf = (sample: readonly number[]): Estimate => {
  const n = sample.length;
  const value = sample.reduce((sum, one) => sum + one, 0) / n;
  const squares = sample.reduce((sum, one) => sum + (one - value) ** 2, 0);
  return { value, standardUncertainty: Math.sqrt(squares / (n - 1) / n), degreesOfFreedom: n - 1 };
};

// Student 1908, as data set sleep of R 4.2.2.
const sleepA = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
const sleepB = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

const known = (value: number, standardUncertainty: number): Estimate => ({
  value,
  standardUncertainty,
  degreesOfFreedom: Infinity,
});

describe("differenceOfMeans", () => {
  it("is Welch's test of the sleep data", () => {
    const found = differenceOfMeans(estimateOf(sleepA), estimateOf(sleepB));
    // t.test of R 4.2.2 prints these.
    expect(found.t.toFixed(4)).toBe("-1.8608");
    expect(found.degreesOfFreedom.toFixed(3)).toBe("17.776");
    expect(found.probability.toFixed(5)).toBe("0.07939");
    // ttest_ind of SciPy 1.17.1, equal_var=False; 1e-11 for the rounding of data in tenths.
    expect(found.t).toBeCloseTo(-1.8608134674868526, 11);
    expect(found.degreesOfFreedom).toBeCloseTo(17.776473516178488, 11);
    expect(found.probability).toBeCloseTo(0.0793941401873583, 11);
    expect(found.low).toBeCloseTo(-3.3654832307117104, 11);
    expect(found.high).toBeCloseTo(0.20548323071171137, 11);
    expect(found.difference).toBeCloseTo(0.75 - 2.33, 12);
  });

  it("is the normal test where both uncertainties are known", () => {
    // Standard normal tables: 0.05 beyond 1.959964, which is also the interval's factor.
    const found = differenceOfMeans(known(40 + 1.959963985 * 0.5, 0.3), known(40, 0.4));
    expect(found.probability).toBeCloseTo(0.05, 9);
    expect(found.low).toBeCloseTo(0, 8);
    expect(found.degreesOfFreedom).toBe(Infinity);
  });

  it("widens its interval with the level", () => {
    // Student t of 4 degrees of freedom: 2.776445 at 95 %, 4.604095 at 99 % (NIST/SEMATECH e-Handbook 1.3.6.7.2).
    const measured = { value: 1, standardUncertainty: 0.1, degreesOfFreedom: 4 };
    expect(differenceOfMeans(measured, known(0, 0)).high).toBeCloseTo(1 + 0.2776445, 6);
    expect(differenceOfMeans(measured, known(0, 0), 0.99).high).toBeCloseTo(1 + 0.4604095, 6);
  });

  it("is decided by the difference alone where nothing is uncertain", () => {
    expect(differenceOfMeans(known(2, 0), known(1, 0))).toMatchObject({
      t: Infinity,
      probability: 0,
      low: 1,
      high: 1,
    });
    expect(differenceOfMeans(known(2, 0), known(2, 0))).toMatchObject({ t: 0, probability: 1 });
  });

  it("has zero inside its interval exactly where p is above 1 - level", () => {
    const estimate = fc.record({
      value: fc.double({ min: -3, max: 3, noNaN: true }),
      standardUncertainty: fc.double({ min: 0.05, max: 2, noNaN: true }),
      degreesOfFreedom: fc.integer({ min: 1, max: 50 }),
    });
    fc.assert(
      fc.property(estimate, estimate, (first, second) => {
        const found = differenceOfMeans(first, second);
        // A tie is left to rounding.
        fc.pre(Math.abs(found.probability - 0.05) > 1e-9);
        expect(found.low < 0 && found.high > 0).toBe(found.probability > 0.05);
        const turned = differenceOfMeans(second, first);
        expect(turned.difference + found.difference).toBe(0);
        expect(turned.probability).toBeCloseTo(found.probability, 12);
      }),
    );
  });
});
