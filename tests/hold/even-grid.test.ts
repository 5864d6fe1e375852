import { describe, expect, it } from "vitest";
import { evenSeries, runningMean } from "../../src/hold/even-grid.ts";

describe("evenSeries", () => {
  it("fills gaps with straight lines", () => {
    const minutes = Float64Array.of(0, 1, 2, 6, 7, 8);
    const series = evenSeries({ minutes, celsius: minutes.map((minute) => 30 + minute) });
    expect(series.step).toBe(1);
    expect([...series.values]).toEqual([30, 31, 32, 33, 34, 35, 36, 37, 38]);
  });
});

describe("runningMean", () => {
  it("is the mean of the cells around, fewer at the ends", () => {
    expect([...runningMean(Float64Array.of(3, 0, 3, 6), 3)]).toEqual([1.5, 2, 3, 4.5]);
  });
});
