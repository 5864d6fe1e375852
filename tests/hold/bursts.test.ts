import { describe, expect, it } from "vitest";
import { findBursts } from "../../src/hold/bursts.ts";
import { pointsOf } from "./constructed.ts";
import type { Course } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const bursts = (course: Course, step = 1) =>
  findBursts(
    pointsOf(course, { until: 600, step, resolution: 0.1 }),
    flatLevel(0.1),
    0,
    600 / step,
  );

// Constructed courses; 0.5 degC a minute is common sense, no source.
describe("findBursts", () => {
  it("finds what leaves and comes back faster than water, and one stray reading either way", () => {
    const steam = bursts((m) => (m > 300 && m < 310 ? 50 : 41));
    expect(steam).toEqual([{ first: 301, last: 309, clear: 301, final: false }]);
    expect(bursts((m) => (m === 300 ? 47 : 41), 10)).toHaveLength(1);
    expect(bursts((m) => (m === 300 ? 33 : 41), 10)).toHaveLength(1);
  });

  it("leaves an overshoot that cools slowly, a small burst and a long one", () => {
    expect(bursts((m) => 41 + (m < 300 ? 0 : 6 * Math.exp(-(m - 300) / 60)))).toEqual([]);
    expect(bursts((m) => (m > 300 && m < 310 ? 43 : 41))).toEqual([]);
    expect(bursts((m) => (m > 300 && m < 390 ? 50 : 41))).toEqual([]);
  });

  it("leaves one that has not ended", () => {
    expect(bursts((m) => (m > 590 ? 50 : 41))).toEqual([]);
  });
});
