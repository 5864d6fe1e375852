import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equivalence } from "../../src/stats/equivalence.ts";
import { differenceOfMeans } from "../../src/stats/two-means.ts";

const estimate = (difference: number, standardUncertainty: number, degreesOfFreedom: number) => ({
  difference,
  standardUncertainty,
  degreesOfFreedom,
});

/** A sample's mean with its standard error, in the plain way. */
const estimateOf = (sample: readonly number[]) => {
  const value = sample.reduce((sum, one) => sum + one, 0) / sample.length;
  const squares = sample.reduce((sum, one) => sum + (one - value) ** 2, 0);
  const degreesOfFreedom = sample.length - 1;
  const standardUncertainty = Math.sqrt(squares / degreesOfFreedom / sample.length);
  return { value, standardUncertainty, degreesOfFreedom };
};

describe("equivalence", () => {
  // Yields of two processes against -110 and +110, as printed in the R package TOSTER's own tests
  // (test-NCSS1.R), which take them from a statistics manual: difference, standard error, degrees
  // of freedom, both p, 95 % interval. Unrounded with ttest_ind of SciPy 1.17.1.
  it("repeats the published yields, equal variances", () => {
    const found = equivalence(estimate(-8.115384615384642, 51.11428460762154, 27), 110, 0.025);
    expect(found.againstLow.toFixed(5)).toBe("0.02821");
    expect(found.againstHigh.toFixed(5)).toBe("0.01436");
    expect([found.low.toFixed(5), found.high.toFixed(5)]).toEqual(["-112.99323", "96.76246"]);
    expect(found.equivalent).toBe(false);
    expect(found.againstLow).toBeCloseTo(0.028213040555990557, 12);
    expect(found.againstHigh).toBeCloseTo(0.014358679002275563, 12);
  });

  it("repeats the published yields, unequal variances, from the data on", () => {
    // prettier-ignore
    const yieldA = [452, 874, 554, 447, 356, 754, 558, 574, 664, 682, 547, 435, 245];
    // prettier-ignore
    const yieldB = [546, 547, 774, 465, 459, 665, 467, 365, 589, 534, 456, 651, 654, 665, 546, 537];
    const found = equivalence(
      differenceOfMeans(estimateOf(yieldA), estimateOf(yieldB)),
      110,
      0.025,
    );
    expect(found.againstLow.toFixed(5)).toBe("0.03628");
    expect(found.againstHigh.toFixed(5)).toBe("0.02002");
    expect([found.low.toFixed(5), found.high.toFixed(5)]).toEqual(["-120.27336", "104.04259"]);
    expect(found.probability).toBeCloseTo(0.036279216696992654, 12);
    // 5 % each: the interval is the 90 % one, inside the bounds.
    expect(
      equivalence(differenceOfMeans(estimateOf(yieldA), estimateOf(yieldB)), 110),
    ).toMatchObject({
      equivalent: true,
      probability: found.probability,
    });
  });

  it("repeats the skin data of the R package cTOST", () => {
    // Printed: mean 0.02270, deviation 0.13428, df 16, bounds 0.22314 = ln 1.25, interval
    // -0.21174 to 0.25715, not equivalent. Inputs of five decimals: two in the fifth.
    const found = equivalence(estimate(0.0227, 0.13428, 16), Math.log(1.25));
    expect(Math.abs(found.low - -0.21174)).toBeLessThanOrEqual(2e-5);
    expect(Math.abs(found.high - 0.25715)).toBeLessThanOrEqual(2e-5);
    expect(found.equivalent).toBe(false);
  });

  // Tails of Student's t and the normal by SciPy 1.17.1.
  // prettier-ignore
  it.each([
    [0.12, 0.1, 7, 0.5, 0.00022262685998943843, 0.0033573919793692085, -0.06945786050900063, true],
    [-0.31, 0.18, 4.6, 0.6, 0.08655733804236995, 0.0024685107235802293, -0.6797933555276404, false],
    [0.05, 0.02, Infinity, 0.1, 3.1908916729108616e-14, 0.006209665325776132, 0.017102927460970557, true],
    [0.9, 0.3, 12, 0.5, 0.0002723024913335644, 0.8964094974422374, 0.36531373330520434, false],
    [0.1, 0.1, 3, 0.3, 0.014004228005073076, 0.06966298427942155, -0.13533634348018234, false],
  ])("%f -+ %f, %f degrees of freedom, against %f", (difference, u, df, bound, low, high, end, equivalent) => {
    const found = equivalence(estimate(difference, u, df), bound);
    expect(found.againstLow / low).toBeCloseTo(1, 10);
    expect(found.againstHigh / high).toBeCloseTo(1, 10);
    expect(found.probability).toBe(Math.max(found.againstLow, found.againstHigh));
    expect(found.low).toBeCloseTo(end, 11);
    expect(found.equivalent).toBe(equivalent);
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
