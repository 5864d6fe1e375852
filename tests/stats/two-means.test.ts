import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { differenceOfMeans } from "../../src/stats/two-means.ts";
import type { Estimate } from "../../src/stats/two-means.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { estimateOf, sleepA, sleepB } from "../reference/two-samples.ts";
import { welch } from "../reference/values/tests-of-two.ts";

describeReferences(welch);

const known = (value: number, standardUncertainty: number): Estimate => ({
  value,
  standardUncertainty,
  degreesOfFreedom: Infinity,
});

describe("differenceOfMeans", () => {
  it("is the difference of the means of the sleep data", () => {
    const found = differenceOfMeans(estimateOf(sleepA), estimateOf(sleepB));
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
