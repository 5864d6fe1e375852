import { describe, expect, it } from "vitest";
import { smallestStep } from "../../../src/readings/cells/resolution.ts";

describe("smallestStep", () => {
  it("is the least difference of different values", () => {
    expect(smallestStep(Float64Array.of(21.5, 41.2, NaN, 41.3, 41.2), 1)).toBeCloseTo(0.1, 9);
    expect(smallestStep(Float64Array.of(20, 20.0625, 20.1875), 1)).toBeCloseTo(0.0625, 9);
  });
  it("is the printed step where nothing varies", () => {
    expect(smallestStep(Float64Array.of(41, 41), 0.1)).toBe(0.1);
  });
});
