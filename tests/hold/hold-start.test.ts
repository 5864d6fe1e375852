import { describe, expect, it } from "vitest";
import { findHoldStart, settledHalfWidth } from "../../src/hold/hold-start.ts";
import { approachNight, interrupted, pointsOf, rampNight } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const calm = new Uint8Array(601);
const startOf = (course: (m: number) => number, reach = 0, disturbed = calm): number | null => {
  const points = pointsOf(course, { until: 600, resolution: 0.001 });
  return findHoldStart(points, flatLevel(reach), 0, 600, disturbed);
};

const largeOvershoot = (m: number): number =>
  m < 100 ? 21 + 0.2 * m : m < 150 ? 43 : m < 200 ? 43 - 0.04 * (m - 150) : 41;

const smallOvershoot = (m: number): number => (m < 105 ? 20 + 0.2 * m : m < 130 ? 42.2 : 41);

describe("findHoldStart", () => {
  it("is where the approach comes within half a degree", () => {
    // 45 ln(21 / 0.5) = 168.2; smoothing over three minutes and the minute's grid leave a minute.
    expect(Math.abs(startOf(approachNight(45))! - 45 * Math.log(42))).toBeLessThan(1.5);
  });

  it("does not count a sweep through the band on the way to an overshoot", () => {
    // Back below 41.5 degC at minute 187.5.
    expect(Math.abs(startOf(largeOvershoot)! - 187.5)).toBeLessThan(2);
  });

  it("counts an overshoot within the ordinary swing as hold", () => {
    expect(startOf(smallOvershoot, 1)!).toBeLessThan(105);
  });

  it("is not sent behind a lid lifted hours later", () => {
    expect(startOf(interrupted(rampNight, 400, 6, 60, 8))!).toBeLessThan(115);
  });

  it("is not sent behind a known disturbance soon after the arrival", () => {
    const cut = interrupted(rampNight, 140, 30, 60, 20);
    const disturbed = calm.slice().fill(1, 141, 230);
    expect(startOf(cut)!).toBeGreaterThan(190);
    // Within half a degree of 41 degC at 0.4 degC a minute: minute 111.25.
    expect(Math.abs(startOf(cut, 0, disturbed)! - 111.25)).toBeLessThan(2);
  });

  it("is null where nothing stays", () => {
    expect(startOf((m) => 20 + m / 60)).toBeNull();
  });
});

describe("settledHalfWidth", () => {
  it("is half a degree beyond half the swing, noise taken out", () => {
    expect(settledHalfWidth(flatLevel(1))).toBe(1.5);
    expect(settledHalfWidth({ ...flatLevel(0.1), noise: 0.1 })).toBe(0.5);
  });
});
