import { describe, expect, it } from "vitest";
import { describeBand } from "../../src/hold/band.ts";

describe("describeBand", () => {
  it("weighs by time, not by readings", () => {
    // Constructed: 40 for 90 minutes in nine readings, 42 for 10 minutes in ten.
    const celsius = Float64Array.from({ length: 19 }, (_, index) => (index < 9 ? 40 : 42));
    const weights = Float64Array.from({ length: 19 }, (_, index) => (index < 9 ? 10 : 1));
    const minutes = celsius.map((_, index) => index);
    const band = describeBand({ minutes, celsius, weights }, 0.5);
    expect(band.mean).toBeCloseTo(40.2, 12);
    expect(band.median).toBe(40);
    // Spread over time: sqrt(0.9 x 0.2^2 + 0.1 x 1.8^2) = 0.6.
    expect(band.standardDeviation).toBeCloseTo(0.6, 12);
    expect(band.band).toEqual({ low: 40, high: 40 });
    expect([band.min, band.max]).toEqual([40, 42]);
  });

  it("holds the central share of evenly spread temperatures", () => {
    const celsius = Float64Array.from({ length: 10_001 }, (_, index) => 40 + index / 10_000);
    const ones = celsius.map(() => 1);
    const { band } = describeBand({ minutes: celsius, celsius, weights: ones }, 0.95);
    // Uniform on 40..41; quantiles of the grid are off by at most one step of 1e-4.
    expect(band.low).toBeCloseTo(40.025, 3);
    expect(band.high).toBeCloseTo(40.975, 3);
  });
});
