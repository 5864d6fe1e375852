import { describe, expect, it } from "vitest";
import { findSpikes } from "../../../src/readings/cells/spikes.ts";

const marked = (celsius: readonly number[], step: number): number[] => {
  const minutes = Float64Array.from(celsius, (_, index) => index * step);
  const marks = findSpikes(minutes, Float64Array.from(celsius));
  return [...marks.keys()].filter((index) => marks[index] === 1);
};

const series = (count: number, at: (index: number) => number): number[] =>
  Array.from({ length: count }, (_, index) => at(index));
const rounded = (value: number, to: number): number => Math.round(value / to) * to;

/** Constructed: 85.0 imitates a sensor's reset. */
const resets = [40.1, 40.2, 40, 40.3, 47.5, 40.2, 40.1, 40.2, 40.4, 85, 40.3, 40.2];

describe("findSpikes", () => {
  it("marks the two leaps of the Hampel identifier's constructed case", () => {
    expect(marked(resets, 0.5)).toEqual([4, 9]);
  });

  it("marks two readings on end, and a leap down", () => {
    expect(marked([40, 40.1, 40, 55, 55.2, 40.1, 40, 40.1], 1 / 12)).toEqual([3, 4]);
    expect(marked([40, 40.1, 40, 22, 40.1, 40, 40.1], 1 / 12)).toEqual([3]);
  });

  it.each([
    ["the same leaps in readings 30 min apart", resets, 30],
    ["three readings on end", [40, 40.1, 40, 55, 55, 55, 40.1, 40, 40.1], 1 / 12],
    ["a leap at the start or the end", [55, 40, 40.1, 40, 40.1, 40, 55], 1 / 12],
    ["a leap that does not come back", [40, 40, 40, 40.1, 47, 47, 47, 47.1, 47], 1 / 12],
    ["a warm-up", series(200, (index) => 40 - 20 * Math.exp(-index / 40)), 0.5],
    ["a kettle", series(60, (index) => Math.min(98, 20 + index * 3)), 0.5],
    ["one step of the resolution", series(200, (index) => (index % 50 === 25 ? 40.5 : 40)), 1 / 12],
    [
      "a quantised hold",
      series(400, (index) => rounded(40 + 0.04 * Math.sin(index * 7), 0.0625)),
      1 / 12,
    ],
    [
      "a thermostat's swing, coarsely read",
      series(200, (index) => 40 + 1.5 * Math.sin(index * 2.1)),
      5,
    ],
    [
      "a thermostat's pulse, coarsely read",
      series(200, (index) => (index % 12 === 6 ? 42 : 40)),
      5,
    ],
    // Two minutes in room air with a time constant of 20 min, then back at the water's own pace.
    [
      "a lid lift",
      series(120, (index) =>
        index < 60
          ? 40
          : index < 62
            ? 40 - (index - 59) * 0.9
            : 40 - 1.8 * Math.exp(-(index - 61) / 15),
      ),
      1,
    ],
    ["noise", series(500, (index) => 40 + 0.1 * Math.sin(index * index)), 1 / 12],
    ["two readings", [40, 60], 1],
    ["none", [], 1],
  ] as const)("marks nothing in %s", (_name, celsius, step) => {
    expect(marked(celsius, step)).toEqual([]);
  });

  it("finds each of several, near and far apart, and at two from the ends", () => {
    const leaps = new Set([2, 9, 17, 30, 31, 400, 997]);
    const celsius = series(1000, (index) => 40 + 0.05 * Math.sin(index * index));
    const leapt = celsius.map((value, index) => (leaps.has(index) ? value + 9 : value));
    expect(marked(leapt, 1 / 12)).toEqual([...leaps]);
  });
});
