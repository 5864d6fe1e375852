import { describe, expect, it } from "vitest";
import { findPhases } from "../../src/hold/phases.ts";
import { coolingFrom, interrupted, pointsOf, rampNight, sawtooth } from "./constructed.ts";
import type { Course } from "./constructed.ts";

const phasesOf = (course: Course) =>
  findPhases(pointsOf(course, { until: 720, noise: 0.05, resolution: 0.1 }));
const kinds = (course: Course) => phasesOf(course).phases.map(({ kind }) => kind);

const riseAndFall: Course = (m) => (m < 200 ? 20 + m / 5 : 20 + 40 * Math.exp(-(m - 200) / 150));

const steam: Course = (m) => (m > 300 && m < 310 ? 56 : 27);

describe("findPhases", () => {
  it("gives every kind of phase in order", () => {
    const course = coolingFrom(interrupted(rampNight, 300, 40, 200, 15), 600, 300);
    expect(kinds(course)).toEqual(["idle", "warm-up", "hold", "disturbance", "hold", "cool-down"]);
  });

  it("calls a flat log at room temperature idle, one above 25 degC a hold", () => {
    expect(kinds(() => 21)).toEqual(["idle"]);
    expect(kinds(() => 26)).toEqual(["hold"]);
  });

  it("believes a thermostat's swing even at a room's temperature", () => {
    expect(kinds((m) => 22 + sawtooth(20, 0.6)(m))).toEqual(["hold"]);
  });

  it("keeps a flat log a hold where ten minutes of steam break in", () => {
    const { phases } = phasesOf(steam);
    expect(phases.map(({ kind }) => kind)).toEqual(["hold", "disturbance", "hold"]);
    expect(phases[1]).not.toHaveProperty("cause");
    expect(Math.abs(phases[1]!.fromMinute - 300)).toBeLessThan(2);
    expect(Math.abs(phases[1]!.toMinute - 310)).toBeLessThan(2);
  });

  it("names rise and fall where nothing was held", () => {
    const { phases, hold } = phasesOf(riseAndFall);
    expect(hold).toBeNull();
    expect(phases.map(({ kind }) => kind).slice(-2)).toEqual(["warm-up", "cool-down"]);
  });
});
