import { describe, expect, it } from "vitest";
import { hourMeans } from "../../src/hold/hour-means.ts";

const minutely = (celsius: readonly number[]) => ({
  minutes: Float64Array.from(celsius, (_, index) => 100 + index),
  celsius: Float64Array.from(celsius),
  weights: Float64Array.from(celsius, () => 1),
});

describe("hourMeans", () => {
  it("gives the lowest and highest whole hour", () => {
    const hours = [40, 41, 39, 40].flatMap((level) => Array.from({ length: 60 }, () => level));
    expect(hourMeans(minutely(hours))).toEqual({ low: 39, high: 41 });
  });

  it("leaves an hour out that is less than half filled", () => {
    const readings = [
      ...Array.from({ length: 120 }, () => 40),
      ...Array.from({ length: 20 }, () => 50),
    ];
    expect(hourMeans(minutely(readings))).toEqual({ low: 40, high: 40 });
  });

  it("falls back on the mean of all where no hour is filled", () => {
    expect(hourMeans(minutely([39, 41]))).toEqual({ low: 40, high: 40 });
  });
});
