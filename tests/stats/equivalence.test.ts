import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equivalence } from "../../src/stats/equivalence.ts";
import { differenceOfMeans } from "../../src/stats/two-means.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { estimateOf, yieldA, yieldB } from "../reference/two-samples.ts";
import { equivalenceTests } from "../reference/values/tests-of-two.ts";

describeReferences(equivalenceTests);

const estimate = (difference: number, standardUncertainty: number, degreesOfFreedom: number) => ({
  difference,
  standardUncertainty,
  degreesOfFreedom,
});

describe("equivalence", () => {
  it("decides the published yields and the skin data as their sources do", () => {
    const yields = differenceOfMeans(estimateOf(yieldA), estimateOf(yieldB));
    const equal = estimate(-8.115384615384642, 51.11428460762154, 27);
    expect(equivalence(equal, 110, 0.025).equivalent).toBe(false);
    expect(equivalence(yields, 110, 0.025).equivalent).toBe(false);
    // 5 % each: the interval is the 90 % one, inside the bounds.
    expect(equivalence(yields, 110)).toMatchObject({
      equivalent: true,
      probability: equivalence(yields, 110, 0.025).probability,
    });
    expect(equivalence(estimate(0.0227, 0.13428, 16), Math.log(1.25)).equivalent).toBe(false);
  });

  it.each([
    [0.12, 0.1, 7, 0.5, true],
    [-0.31, 0.18, 4.6, 0.6, false],
    [0.05, 0.02, Infinity, 0.1, true],
    [0.9, 0.3, 12, 0.5, false],
    [0.1, 0.1, 3, 0.3, false],
  ])("%f -+ %f, %f degrees of freedom, against %f: %s", (difference, u, df, bound, is) => {
    const found = equivalence(estimate(difference, u, df), bound);
    expect(found.probability).toBe(Math.max(found.againstLow, found.againstHigh));
    expect(found.equivalent).toBe(is);
  });

  it("goes by the difference alone where it is exact, and never meets a bound of nothing", () => {
    expect(equivalence(estimate(0.2, 0, Infinity), 0.3).equivalent).toBe(true);
    expect(equivalence(estimate(0.3, 0, Infinity), 0.3).equivalent).toBe(false);
    expect(equivalence(estimate(-0.4, 0, Infinity), 0.3).equivalent).toBe(false);
    expect(equivalence(estimate(0, 0.1, 20), 0).equivalent).toBe(false);
    expect(equivalence(estimate(0, 0.1, 20), -1).equivalent).toBe(false);
  });

  it("agrees with its interval, which lies inside the bounds or does not", () => {
    const inputs = fc.record({
      difference: fc.double({ min: -1, max: 1, noNaN: true }),
      standardUncertainty: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
      degreesOfFreedom: fc.double({ min: 1, max: 80, noNaN: true }),
    });
    fc.assert(
      fc.property(inputs, fc.double({ min: 0.05, max: 1.5, noNaN: true }), (input, bound) => {
        const found = equivalence(input, bound);
        // A tie is left to rounding.
        fc.pre(Math.abs(found.probability - 0.05) > 1e-9);
        expect(found.equivalent).toBe(found.low > -bound && found.high < bound);
      }),
    );
  });
});
