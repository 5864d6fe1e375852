import { describe, expect, it } from "vitest";
import { findGaps } from "../../../src/readings/times/gaps.ts";

const even = (count: number, step: number, from = 0): number[] =>
  Array.from({ length: count }, (_, index) => from + index * step);

describe("findGaps", () => {
  it("finds steps far beyond the usual one, in order", () => {
    const minutes = [...even(100, 0.5), ...even(100, 0.5, 80), ...even(100, 0.5, 150)];
    const { medianStep, gaps } = findGaps(Float64Array.from(minutes));
    expect(medianStep).toBe(0.5);
    expect(gaps).toEqual([
      { index: 100, minutes: 30.5 },
      { index: 200, minutes: 20.5 },
    ]);
  });

  it.each([
    ["readings by hand, a night slept through", [0, 20, 45, 60, 95, 120, 600, 630]],
    ["readings that thin out", even(40, 1).map((minute) => minute ** 1.5)],
    ["one lost reading", [...even(50, 1), ...even(50, 1, 51)]],
    ["half a minute in a fast log", [...even(300, 1 / 60), ...even(300, 1 / 60, 5.5)]],
    ["even", even(500, 5)],
    ["one reading", [0]],
    ["none", []],
  ])("finds none in %s", (_name, minutes) => {
    expect(findGaps(Float64Array.from(minutes)).gaps).toEqual([]);
  });

  it("tells the median step: of an even number the mean of the middle two", () => {
    expect(findGaps(Float64Array.of(0, 1, 4, 6, 10)).medianStep).toBe(2.5);
    expect(findGaps(Float64Array.of(0, 1, 4, 6)).medianStep).toBe(2);
    expect(findGaps(Float64Array.of(0)).medianStep).toBeNaN();
  });
});
