import { describe, expect, it } from "vitest";
import { usualStep } from "../../../src/readings/times/steps.ts";

describe("usualStep", () => {
  it("is the median of the steps forward", () => {
    expect(usualStep(Float64Array.of(0, 5, 10, 15, 3615))).toEqual({ median: 5, share: 0.75 });
    expect(usualStep(Float64Array.of(0, 5, 3, 8, 13)).median).toBe(5);
    expect(usualStep(Float64Array.of(7)).median).toBeNaN();
  });
  it("is the same from a sample of a long column", () => {
    const seconds = Float64Array.from({ length: 200_000 }, (_, row) => row * 5);
    expect(usualStep(seconds)).toEqual({ median: 5, share: 1 });
  });
});
