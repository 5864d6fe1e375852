import { describe, expect, it } from "vitest";
import { cellWeights, gapLimit, usualStep } from "../../src/stats/time-weights.ts";

describe("time weights", () => {
  it("stand for half the interval to each neighbour and sum to the stretch", () => {
    const minutes = Float64Array.of(0, 10, 40, 60);
    const weights = cellWeights(minutes, 0, 4, { from: 0, to: 60 }, 1000);
    expect([...weights]).toEqual([5, 20, 25, 10]);
  });

  it("reach to the borders of the stretch, not beyond", () => {
    const weights = cellWeights(Float64Array.of(0, 10, 20, 30), 1, 3, { from: 8, to: 23 }, 1000);
    expect([...weights]).toEqual([2 + 5, 5 + 3]);
  });

  it("stop half-way into a gap's limit", () => {
    const minutes = Float64Array.of(0, 1, 2, 100, 101);
    const limit = gapLimit(usualStep(minutes));
    expect(limit).toBe(5);
    const weights = cellWeights(minutes, 0, 5, { from: 0, to: 101 }, limit);
    expect([...weights]).toEqual([0.5, 1, 3, 3, 0.5]);
  });

  it("knows no step for fewer than two readings", () => {
    expect(usualStep(Float64Array.of(3))).toBe(0);
  });
});
