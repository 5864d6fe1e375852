import { describe, expect, it } from "vitest";
import { coolingPoints } from "../../src/culture/cooling-stretch.ts";

/** A straight fall of `perReading` degC from 90, rounded to `resolution`. */
const falling = (count: number, perReading: number, resolution: number) => ({
  minutes: Float64Array.from({ length: count }, (_, index) => index / 6),
  celsius: Float64Array.from(
    { length: count },
    (_, index) => Math.round((90 - perReading * index) / resolution) * resolution,
  ),
});

describe("coolingPoints", () => {
  it("keeps few readings as they are, with half a display step's doubt and the pot's currents", () => {
    const readings = falling(12, 1, 0.5);
    const { minutes, celsius, uncertainty } = coolingPoints(readings, 2, 12, 0.5);
    expect([...minutes]).toEqual([...readings.minutes.subarray(2)]);
    expect([...celsius]).toEqual([...readings.celsius.subarray(2)]);
    // resolution / sqrt(12) (JCGM 100:2008, F.2.2.1) and 0.03 degC; a straight fall has no noise.
    expect(uncertainty[3]).toBeCloseTo(Math.hypot(0.5 / Math.sqrt(12), 0.03), 9);
  });

  it("averages many to at most 40, the last of them full", () => {
    const readings = falling(1001, 0.04, 0.01);
    const points = coolingPoints(readings, 0, 1001, 0.01);
    expect(points.minutes.length).toBeLessThanOrEqual(40);
    // 26 readings to a point: the last stands 12.5 of their sixths of a minute before the end.
    expect(points.minutes.at(-1)).toBeCloseTo(readings.minutes[1000]! - 12.5 / 6, 9);
    // A mean of a straight fall lies on it.
    points.minutes.forEach((minute, index) => {
      expect(Math.abs(points.celsius[index]! - (90 - 0.04 * 6 * minute))).toBeLessThan(0.006);
    });
  });

  it("does not let a coarse display average away where nothing moves through its steps", () => {
    const still = falling(400, 0.0001, 0.5);
    const [first] = coolingPoints(still, 0, 400, 0.5).uncertainty;
    expect(first).toBeGreaterThan(0.5 / Math.sqrt(12) - 1e-9);
    const moving = falling(400, 0.1, 0.5);
    expect(coolingPoints(moving, 0, 400, 0.5).uncertainty[0]).toBeLessThan(first!);
  });
});
