import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mean } from "../../src/stats/summary.ts";
import {
  weightedMean,
  weightedQuantiles,
  weightedStandardDeviation,
} from "../../src/stats/weighted.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { quantiles } from "../reference/values/robust.ts";

describeReferences(quantiles);

const ones = (n: number): number[] => Array.from({ length: n }, () => 1);

const at = (p: number): number => weightedQuantiles([30, 10, 20], [1, 1, 2], [p])[0]!;

describe("weightedMean and weightedStandardDeviation", () => {
  // By hand: (2*1 + 4*2 + 10*1)/4 = 5; ((9 + 2*1 + 25)/4) = 9, root 3.
  it("weighs each reading by its time", () => {
    expect(weightedMean([2, 4, 10], [1, 2, 1])).toBe(5);
    expect(weightedStandardDeviation([2, 4, 10], [1, 2, 1])).toBe(3);
  });

  it("is the plain mean under equal weights", () => {
    const values = [40.1, 40.3, 39.8, 41.2];
    expect(weightedMean(values, ones(4))).toBeCloseTo(mean(values), 14);
  });

  it("is NaN without weight", () => {
    expect(weightedMean([40], [0])).toBeNaN();
    expect(weightedStandardDeviation([], [])).toBeNaN();
  });
});

describe("weightedQuantiles", () => {
  // By hand: weights 1, 2, 1 have middles at 0.5, 2 and 3.5 of 4.
  it("interpolates between the middles of the weights", () => {
    expect([at(0), at(0.125), at(0.3125), at(0.5), at(0.875), at(1)]).toEqual([
      10, 10, 15, 20, 30, 30,
    ]);
  });

  it("leaves out readings without weight, and has none of nothing", () => {
    expect(weightedQuantiles([99, 40, -50], [0, 2, 0], [0, 0.5, 1])).toEqual([40, 40, 40]);
    expect(weightedQuantiles([], [], [0.5])[0]).toBeNaN();
    expect(weightedQuantiles([40], [0], [0.5])[0]).toBeNaN();
  });

  const table = fc.array(
    fc.tuple(fc.integer({ min: 350, max: 450 }), fc.integer({ min: 1, max: 8 })),
    { minLength: 1, maxLength: 80 },
  );
  const ps = [0, 0.025, 0.2, 0.5, 0.9, 0.975, 1];

  it("does not depend on the order, rises with p, stays within the readings", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const values = rows.map(([value]) => value);
        const weights = rows.map(([, weight]) => weight);
        const found = weightedQuantiles(values, weights, ps);
        const turned = weightedQuantiles(values.toReversed(), weights.toReversed(), ps);
        found.forEach((value, i) => expect(turned[i]).toBeCloseTo(value, 9));
        for (let i = 1; i < found.length; i++)
          expect(found[i]).toBeGreaterThanOrEqual(found[i - 1]!);
        expect(found[0]).toBe(Math.min(...values));
        expect(found.at(-1)).toBe(Math.max(...values));
      }),
    );
  });

  it("follows a change of scale", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const values = rows.map(([value]) => value);
        const weights = rows.map(([, weight]) => weight);
        const found = weightedQuantiles(values, weights, ps);
        const fahrenheit = values.map((value) => 1.8 * value + 32);
        weightedQuantiles(fahrenheit, weights, ps).forEach((value, i) =>
          expect(value).toBeCloseTo(1.8 * found[i]! + 32, 8),
        );
      }),
    );
  });
});
