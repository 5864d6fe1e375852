import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compensatedSum, highest, mean, standardDeviation } from "../../src/stats/summary.ts";
import { correctDigits } from "./correct-digits.ts";
import * as nist from "./nist-data.ts";

// NIST StRD, Univariate Summary Statistics: certified mean and standard deviation
// (n - 1). The rule is nine correct digits.
// NumAcc4 alone allows eight for the deviation: 10000000.1 as a double is off
// by up to 9.3e-10, which is 1e-8 of the deviation 0.1 whatever the algorithm.
// prettier-ignore
const certified = [
  ["Lew", nist.lew, -177.435, 277.332168044316, 9],
  ["Lottery", nist.lottery, 518.95871559633, 291.699727470969, 9],
  ["Mavro", nist.mavro, 2.001856, 0.000429123454003053, 9],
  ["Michelso", nist.michelso, 299.8524, 0.0790105478190518, 9],
  ["NumAcc1", nist.numAcc1, 10000002, 1, 9],
  ["NumAcc2", nist.numAcc2, 1.2, 0.1, 9],
  ["NumAcc3", nist.numAcc3, 1000000.2, 0.1, 9],
  ["NumAcc4", nist.numAcc4, 10000000.2, 0.1, 8],
] as const;

describe("summary statistics on NIST StRD", () => {
  it.each(certified)("%s", (_, data, centre, deviation, deviationDigits) => {
    expect(correctDigits(mean(data), centre)).toBeGreaterThanOrEqual(14);
    expect(correctDigits(standardDeviation(data), deviation)).toBeGreaterThanOrEqual(
      deviationDigits,
    );
  });

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
