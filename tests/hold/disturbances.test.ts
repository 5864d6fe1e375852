import { describe, expect, it } from "vitest";
import { findDisturbances } from "../../src/hold/disturbances.ts";
import { coolingFrom, interrupted, pointsOf, sawtooth } from "./constructed.ts";
import type { Course, Sampling } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const held: Course = () => 41;
const usual = { until: 600, noise: 0.05, resolution: 0.1 };
const found = (course: Course, reach: number, sampling: Sampling = usual) =>
  findDisturbances(pointsOf(course, sampling), flatLevel(reach), 0, 600, 20);

const overshoot: Course = (m) => 41 + (m < 200 ? 0 : 6 * Math.exp(-(m - 200) / 40));

describe("findDisturbances", () => {
  it("finds a lid lifted in noisy readings of a tenth", () => {
    const [lid, ...rest] = found(interrupted(held, 300, 5, 60, 8), 0.12);
    expect(rest).toEqual([]);
    expect(lid).toMatchObject({ cause: "lid-lifted", final: false });
    expect(Math.abs(lid!.first - 300)).toBeLessThan(4);
  });

  it("finds a power cut from its onset to the return", () => {
    const [cut] = found(interrupted(held, 300, 60, 300, 30), 0.12);
    expect(cut!.cause).toBe("power-cut");
    expect(Math.abs(cut!.first - 300)).toBeLessThan(8);
    // 3.8 degC missing at 360, within half a degree of the spread after 30 ln(3.8 / 0.62) = 54 min more.
    expect(Math.abs(cut!.last - 414)).toBeLessThan(15);
  });

  it("never takes thermostat cycles, a slow drift or heat", () => {
    expect(found((m) => 41 + sawtooth(45, 3, 0.15)(m), 1.5)).toEqual([]);
    expect(found((m) => 41 - m / 600, 0.12)).toEqual([]);
    expect(found((m) => (m > 200 && m < 240 ? 43 : 41), 0.12)).toEqual([]);
  });

  it("takes a lone reading that no water could follow for one without a cause, so that it stays out of the hold", () => {
    const stray = found((m) => (m === 200 ? 30 : 41), 0.12);
    expect(stray).toEqual([{ first: 200, last: 200, clear: 200, final: false }]);
  });

  it("takes a burst of steam, which no water could follow, for one, but not an overshoot", () => {
    const steam = found((m) => (m > 200 && m < 208 ? 55 : 41), 0.12);
    expect(steam).toHaveLength(1);
    expect(steam[0]).toMatchObject({ first: 201, last: 207, final: false });
    expect(found(overshoot, 0.12)).toEqual([]);
  });

  it("does not take one step of a coarse logger for a fall", () => {
    const coarse = { until: 600, resolution: 0.5 };
    expect(found((m) => (m > 200 && m < 230 ? 40.7 : 41), 0, coarse)).toEqual([]);
  });

  it("marks a fall that never returns as final, one that recovers at the end as not", () => {
    expect(found(coolingFrom(held, 500, 300), 0.12).at(-1)).toMatchObject({
      final: true,
      last: 600,
    });
    expect(found(interrupted(held, 500, 40, 200, 60), 0.12).at(-1)).toMatchObject({
      final: false,
      last: 600,
    });
  });
});
