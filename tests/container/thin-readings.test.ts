import { describe, expect, it } from "vitest";
import { thinned } from "../../src/container/thin-readings.ts";
import { course } from "./courses.ts";

describe("thinned", () => {
  it("takes means of neighbours: a straight line stays the same line", () => {
    // Constructed: 1000 readings to at most 100.
    const { minutes, celsius } = thinned(
      course(0.1, 99.9, (minute) => 20 + 0.3 * minute),
      100,
      5,
    );
    expect(minutes).toHaveLength(100);
    minutes.forEach((minute, i) => expect(celsius[i]).toBeCloseTo(20 + 0.3 * minute, 10));
  });

  it("never averages over a gap", () => {
    const minutes = Float64Array.of(0, 1, 2, 100, 101, 102);
    const means = thinned({ minutes, celsius: minutes }, 2, 5);
    expect([...means.minutes]).toEqual([1, 101]);
  });

  it("leaves few readings as they are", () => {
    const few = course(1, 5, () => 40);
    expect(thinned(few, 100, 5)).toBe(few);
  });
});
