import { describe, expect, it } from "vitest";
import { indexFrom, workingPoints } from "../../src/hold/grid.ts";

describe("workingPoints", () => {
  it("averages dense readings by the minute and keeps the log's borders", () => {
    const minutes = Float64Array.from({ length: 3601 }, (_, index) => index / 60);
    const celsius = minutes.map((minute) => 40 + 0.1 * minute);
    const points = workingPoints(minutes, celsius, 0.1);
    expect(points.minutes).toHaveLength(61);
    expect(points.minutes[0]).toBe(0);
    expect(points.minutes[60]).toBe(60);
    // Each cell's mean of a straight course is the course at the cell's mean time.
    for (let cell = 1; cell < 60; cell += 1) {
      expect(points.celsius[cell]).toBeCloseTo(40 + 0.1 * points.minutes[cell]!, 9);
    }
  });

  it("leaves sparse readings and empty stretches as they are", () => {
    const minutes = Float64Array.of(0, 45, 130, 250);
    const celsius = Float64Array.of(20, 38, 40, 40);
    const points = workingPoints(minutes, celsius, 0.5);
    expect([...points.minutes]).toEqual([...minutes]);
    expect([...points.celsius]).toEqual([...celsius]);
  });

  it("stays small for a month of seconds", () => {
    const minutes = Float64Array.from({ length: 500_000 }, (_, index) => index / 12);
    const points = workingPoints(minutes, minutes, 0.1);
    expect(points.minutes.length).toBeLessThan(2300);
  });
});

describe("indexFrom", () => {
  it("finds the first point at or after a minute, else the last", () => {
    const minutes = Float64Array.of(0, 10, 20);
    expect([-1, 0, 1, 10, 20, 99].map((minute) => indexFrom(minutes, minute))).toEqual([
      0, 0, 1, 1, 2, 2,
    ]);
  });
});
