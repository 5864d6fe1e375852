import { describe, expect, it } from "vitest";
import { findLevel } from "../../src/hold/find-level.ts";
import { levelAt } from "../../src/hold/level.ts";
import { settledApproach } from "../../src/hold/settled-approach.ts";
import { approachNight, pointsOf, rampNight } from "./constructed.ts";
import type { Course } from "./constructed.ts";

const settled = (course: Course, stretch: { from: number; to: number }) => {
  const points = pointsOf(course, { until: 720, noise: 0.05, resolution: 0.01 });
  const none = new Uint8Array(points.minutes.length);
  return settledApproach(points, stretch, none, findLevel(points, stretch, none)!);
};

describe("settledApproach", () => {
  it("knows the level a slow approach is heading for", () => {
    const level = settled(approachNight(100), { from: 300, to: 720 });
    expect(Math.abs(levelAt(level!, 600) - 41)).toBeLessThan(0.1);
  });

  it("is null for a thermostat's ramp and without a rise", () => {
    expect(settled(rampNight, { from: 113, to: 720 })).toBeNull();
    expect(settled(() => 41, { from: 0, to: 720 })).toBeNull();
  });
});
