import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { median, medianAbsoluteDeviation, scaledMad } from "../../src/stats/median.ts";
import { normalQuantile } from "../../src/stats/normal.ts";
import { lew, lottery, michelso } from "./nist-data.ts";

describe("median", () => {
  // NIST StRD pages of these sets print the medians -162, 522.5 and 299.85.
  // (From memory; each is checked by sorting as well.)
  it.each([
    ["Lew", lew, -162],
    ["Lottery", lottery, 522.5],
    ["Michelso", michelso, 299.85],
  ])("%s", (_, data, expected) => {
    expect(median(data)).toBeCloseTo(expected, 12);
  });

  it("agrees with sorting, ties included", () => {
    const values = fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 1, maxLength: 300 });
    fc.assert(
      fc.property(values, (data) => {
        const sorted = data.toSorted((a, b) => a - b);
        const half = sorted.length >> 1;
        const expected =
          sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
        expect(median(data)).toBe(expected + 0);
      }),
    );
  });

  it("leaves its input alone and has no median of nothing", () => {
    const data = [3, 1, 2];
    median(data);
    expect(data).toEqual([3, 1, 2]);
    expect(median([])).toBeNaN();
  });
});

describe("medianAbsoluteDeviation", () => {
  // By hand: 1 1 2 2 4 6 9 has median 2, deviations 1 1 0 0 2 4 7, their median 1.
  it("is the median distance from the median", () => {
    expect(medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9])).toBe(1);
    expect(medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9], 4)).toBe(2);
  });

  // 1/Phi^-1(0.75), the constant of the Hampel identifier; to rounding of a division.
  it("has the factor of the normal distribution", () => {
    expect(scaledMad).toBeCloseTo(1 / normalQuantile(0.75), 14);
  });
});
