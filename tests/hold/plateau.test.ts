import { describe, expect, it } from "vitest";
import { ownRange } from "../../src/hold/own-range.ts";
import { hasPlateau } from "../../src/hold/plateau.ts";
import { approachNight, pointsOf, rampNight, sawtooth } from "./constructed.ts";
import type { Course } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const judged = (course: Course, from: number): boolean => {
  const points = pointsOf(course, { until: 900, noise: 0.03, resolution: 0.01 });
  const later = ownRange(points, 0, 900, new Uint8Array(901))!;
  return hasPlateau(points, { from, to: 900 }, flatLevel(0.1), later);
};
/** A room's fall and rise by night, 2 degC in all. */
const room: Course = (m) => Math.sin((2 * Math.PI * m) / 1440);

describe("hasPlateau", () => {
  it("sees one that stands still, one reached quickly, one that swings", () => {
    expect(judged(rampNight, 113)).toBe(true);
    expect(judged((m) => rampNight(m) + 0.5 * room(m), 113)).toBe(true);
    expect(judged((m) => 40 + sawtooth(45, 4)(m) + room(m), 0)).toBe(true);
  });

  it("sees none where the readings only follow the room, or are still on their slow way", () => {
    expect(judged((m) => 36 + room(m), 0)).toBe(false);
    expect(judged((m) => approachNight(250)(m) + room(m), 600)).toBe(false);
  });

  it("does not believe an approach seen for less than six of its long time constants", () => {
    const points = pointsOf(approachNight(120), { until: 900, resolution: 0.01 });
    const later = ownRange(points, 0, 900, new Uint8Array(901))!;
    const approach = {
      from: 83,
      timeConstant: 120,
      amplitude: 10.5,
      intercept: 41,
      slope: 0,
      bend: 0,
      earlyResidual: 0.01,
      lateResidual: 0.01,
    };
    const level = { ...flatLevel(0.1), approach };
    expect(hasPlateau(points, { from: 450, to: 900 }, level, later)).toBe(true);
    expect(hasPlateau(points, { from: 450, to: 700 }, level, later)).toBe(false);
  });
});
