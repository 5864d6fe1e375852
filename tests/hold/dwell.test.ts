import { describe, expect, it } from "vitest";
import { dwell } from "../../src/hold/dwell.ts";
import type { HoldReadings } from "../../src/hold/hold.ts";

/** Hourly readings with trapezoid weights. */
const hourly = (celsius: readonly number[]): HoldReadings => ({
  minutes: Float64Array.from(celsius, (_, index) => index * 60),
  celsius: Float64Array.from(celsius),
  weights: Float64Array.from(celsius, (_, index) =>
    index === 0 || index === celsius.length - 1 ? 30 : 60,
  ),
});

describe("dwell", () => {
  it("takes degree-hours by the trapezoid where all readings lie above", () => {
    // Constructed: above 38 the offsets are -2 0 2 4 5 4 2. Trapezoid from the second reading on: 1 + 3 + 4.5 + 4.5 + 3 = 16.
    const times = dwell(hourly([36, 38, 40, 42, 43, 42, 40]), -Infinity, 38);
    expect(times.degreeHoursOutside).toBeCloseTo(16, 9);
    expect(times.aboveMinutes).toBeCloseTo(300, 9);
  });

  it("interpolates crossings: the area is exact for straight lines", () => {
    // Constructed: 37 39 41 38 36 against 38: triangle 0.5 x 0.5 x 1 = 0.25, then (1 + 3)/2 = 2, then 3/2 = 1.5.
    const times = dwell(hourly([37, 39, 41, 38, 36]), -Infinity, 38);
    expect(times.degreeHoursOutside).toBeCloseTo(3.75, 9);
    expect(times.aboveMinutes).toBeCloseTo(150, 9);
    expect(times.longestOutsideMinutes).toBeCloseTo(150, 9);
    expect(times.insideFraction).toBeCloseTo(90 / 240, 9);
  });

  it("gives the share of a sine above its mean + d as 1/2 - asin(d/A)/pi", () => {
    // Closed form; the chords of 4,000 steps a period leave less than 1e-4.
    for (const [amplitude, d, share] of [
      [2, 1.5, 0.230053],
      [1, 0.5, 0.333333],
    ] as const) {
      const minutes = Float64Array.from({ length: 20_001 }, (_, index) => index * 0.01);
      const celsius = minutes.map((m) => 40 + amplitude * Math.sin((2 * Math.PI * m) / 40));
      const weights = minutes.map((_, index) => (index === 0 || index === 20_000 ? 0.005 : 0.01));
      const times = dwell({ minutes, celsius, weights }, -Infinity, 40 + d);
      expect(1 - times.insideFraction).toBeCloseTo(share, 4);
    }
  });

  it("draws nothing across a gap and counts only the weights there", () => {
    // 30 at minutes 0 and 10, then nothing for 500 minutes, then 50: neither passes through 40.
    const readings = {
      minutes: Float64Array.of(0, 10, 510, 520),
      celsius: Float64Array.of(30, 30, 50, 50),
      weights: Float64Array.of(5, 10, 10, 5),
    };
    const times = dwell(readings, 39, 41);
    expect(times.insideFraction).toBe(0);
    expect(times.belowMinutes).toBeCloseTo(15, 9);
    expect(times.aboveMinutes).toBeCloseTo(15, 9);
    expect(times.longestOutsideMinutes).toBeCloseTo(15, 9);
    expect(times.degreeHoursOutside).toBeCloseTo((15 * 9 + 15 * 9) / 60, 9);
  });
});
