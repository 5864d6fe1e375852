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

  it("is what a few readings by hand have in common, in either unit", () => {
    expect(smallestStep(Float64Array.of(20.1, 38.4, 41), 0.1)).toBeCloseTo(0.1, 9);
    expect(smallestStep(Float64Array.of(20.5, 38, 41), 0.1)).toBeCloseTo(0.5, 9);
    expect(smallestStep(Float64Array.of(20, 38, 40, 47), 1)).toBe(1);
    // 0.1 degF is 0.1 / 1.8 degC, by the definition of the scale.
    const fahrenheit = [68.2, 101.3, 105.8].map((value) => (value - 32) / 1.8);
    expect(smallestStep(Float64Array.from(fahrenheit), 0.1 / 1.8)).toBeCloseTo(0.1 / 1.8, 3);
  });
  it("is the least difference again where a logger has written many", () => {
    // Steps of 0.0625 printed with two decimals: 0.06 and 0.07 have only 0.01 in common.
    const rounded = Float64Array.from(
      { length: 40 },
      (_, at) => [40.94, 41, 41.06, 41.13][at % 4]!,
    );
    expect(smallestStep(rounded, 0.01)).toBeCloseTo(0.06, 9);
  });
});
