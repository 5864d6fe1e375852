import { describe, expect, it } from "vitest";
import { findExcursions } from "../../src/hold/excursions.ts";
import { pointsOf } from "./constructed.ts";

const level = { intercept: 41, slope: 0, approach: null, low: 0, high: 0, noise: 0, variation: 0 };

const threeRuns = (m: number): number =>
  m >= 10 && m < 15 ? 39 : m === 30 ? 43 : m >= 48 ? 38 : 41;

describe("findExcursions", () => {
  it("gives runs outside the band with their depths, also one that runs to the end", () => {
    const runs = findExcursions(pointsOf(threeRuns, { until: 50 }), level, -0.5, 0.5, 0, 50);
    expect(runs).toEqual([
      { first: 10, last: 14, below: 1.5, above: 0 },
      { first: 30, last: 30, below: 0, above: 1.5 },
      { first: 48, last: 50, below: 2.5, above: 0 },
    ]);
  });
});
