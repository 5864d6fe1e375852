import { describe, expect, it } from "vitest";
import type { RespondingAppliance } from "./responding-appliance.ts";
import type { RespondingContainer } from "./responding-container.ts";
import { stepsWith } from "./responding-control.ts";
import {
  followed,
  simulateNight,
  steadyCourse,
  steadyParts,
  swingAt,
} from "./responding-course.ts";
import { roomAt } from "./responding-room.ts";

const appliance: RespondingAppliance = {
  kind: "water bath",
  response: stepsWith(
    { kind: "steps", low: 20, high: 60, step: 1 },
    { bias: 0, slope: 1, curvature: 0 },
  ),
  thermostatted: true,
  thermostatKnown: true,
  roomShare: 0,
  roomLagMinutes: 30,
  swing: null,
  runDeviation: 0.1,
  warmUp: { ramp: 30 },
};
const jars = (shareLost: number, lagMinutes: number): RespondingContainer => ({
  container: {
    id: "jars",
    name: "jars",
    stands: "jars in water",
    volume: 0.5,
    count: 4,
    changedOn: null,
  },
  shareLost,
  lagMinutes,
});
const still = { level: 21, amplitude: 0, hourAtZero: 20 };
const largest = (course: Float64Array): number => course.reduce((a, b) => Math.max(a, b));

describe("steadyCourse", () => {
  it("passes a swing on attenuated by 1 / sqrt(1 + (2 pi tau / P)^2)", () => {
    // Closed form of a first-order lag (heat transfer textbooks, e.g. Lienhard & Lienhard, lumped capacity).
    // Minutes instead of a continuous course cost up to (pi / P)^2 / 6 and the top between two minutes: 1 % at P = 20.
    for (const [periodMinutes, lagMinutes] of [
      [20, 5],
      [45, 15],
      [90, 25],
      [60, 60],
    ] as const) {
      const swing = { peakToPeak: 2, periodMinutes, risingShare: null };
      const parts = steadyParts({ ...appliance, swing }, { room: still, phase: 0.3 }, 1440);
      const amplitude = largest(steadyCourse(parts, jars(0, lagMinutes)));
      const expected = 1 / Math.hypot(1, (2 * Math.PI * lagMinutes) / periodMinutes);
      expect(Math.abs(amplitude / expected - 1)).toBeLessThan(0.01);
    }
  });

  it("lets food stand below its bath by phi (bath - room)", () => {
    // Constructed: bath at 40, room at 21, phi 0.1: 40 - 0.1 * 19 = 38.1.
    const parts = steadyParts(appliance, { room: still, phase: 0 }, 60);
    const food = steadyCourse(parts, jars(0.1, 20)).map((value) => value + 0.9 * 40);
    for (const value of food) expect(value).toBeCloseTo(38.1, 9);
  });

  it("feels the room's day in the bath by its share, late and less by the lag", () => {
    // Closed form: g A / sqrt(1 + (omega tau)^2), omega = 2 pi / 24 h, tau = 2 h.
    const warmer = { ...appliance, thermostatted: false, roomShare: 0.8, roomLagMinutes: 120 };
    const room = { level: 20, amplitude: 2, hourAtZero: 0 };
    const { bath } = steadyParts(warmer, { room, phase: 0 }, 2880);
    const amplitude = largest(bath.subarray(bath.length - 1440));
    const omega = (2 * Math.PI) / 24;
    expect(Math.abs(amplitude / (1.6 / Math.hypot(1, omega * 2)) - 1)).toBeLessThan(0.002);
    const peakHour =
      bath.subarray(bath.length - 1440).findIndex((value) => value === amplitude) / 60;
    // The room is warmest at 17:00; the bath atan(omega tau) / omega later.
    expect(Math.abs(peakHour - (17 + Math.atan(omega * 2) / omega))).toBeLessThan(0.05);
  });
});

describe("simulateNight", () => {
  const run = { room: still, phase: 0, level: 40, minutes: 600 };

  it("brings food up to a bath already warm by an exponential approach", () => {
    // 40 - 20 exp(-t / 45 min), the food's minute ends t = i + 1.
    const { food } = simulateNight(appliance, jars(0, 45), {
      ...run,
      start: { bath: 40, food: 20 },
    });
    for (const minute of [15, 45, 90, 180])
      expect(food[minute - 1]).toBeCloseTo(40 - 20 * Math.exp(-minute / 45), 9);
  });

  it("ramps with a thermostat and holds from where it meets the level", () => {
    const { bath } = simulateNight(appliance, jars(0, 5), {
      ...run,
      start: { bath: 20, food: 20 },
    });
    expect(bath[20]).toBeCloseTo(30, 9);
    expect(bath[39]).toBeLessThan(40);
    for (const value of bath.subarray(40)) expect(value).toBeCloseTo(40, 9);
  });

  it("approaches freely without one, and then agrees with the steady course", () => {
    const free: RespondingAppliance = {
      ...appliance,
      thermostatted: false,
      roomShare: 1,
      warmUp: { lagMinutes: 100 },
    };
    const room = { level: 19, amplitude: 1.5, hourAtZero: 20 };
    const plan = { ...run, room, minutes: 1800, start: { bath: 20, food: 20 } };
    const { bath, food } = simulateNight(free, jars(0.05, 20), plan);
    expect(bath[0]).toBeCloseTo(20, 9);
    const parts = steadyParts(free, plan, 1800);
    const steady = steadyCourse(parts, jars(0.05, 20));
    // 1800 min are 18 of its time constants.
    expect(food.at(-1)).toBeCloseTo(steady.at(-1)! + 0.95 * 40, 5);
  });
});

describe("swingAt", () => {
  it("rises and falls between its ends, about nothing", () => {
    const saw = { peakToPeak: 1.2, periodMinutes: 30, risingShare: 0.25 };
    expect(swingAt(saw, 0)).toBeCloseTo(-0.6, 12);
    expect(swingAt(saw, 2.25)).toBeCloseTo(0.6, 12);
    expect(swingAt(saw, 0.625)).toBeCloseTo(0, 12);
    const many = Array.from({ length: 1000 }, (_, i) => swingAt(saw, i / 1000));
    expect(many.reduce((sum, value) => sum + value, 0) / 1000).toBeCloseTo(0, 3);
  });
});

describe("followed", () => {
  it("trails a steady rise by its lag", () => {
    // r tau behind once settled; each minute's value counts for the whole minute, so half a minute less.
    const rise = Float64Array.from({ length: 600 }, (_, i) => 0.1 * i);
    expect(rise.at(-1)! - followed(rise, 20, 0).at(-1)!).toBeCloseTo(0.1 * (20 - 0.5), 2);
  });
});

describe("roomAt", () => {
  it("is warmest at five in the afternoon and coldest at five in the morning", () => {
    const wave = { level: 20, amplitude: 2, hourAtZero: 5 };
    expect(roomAt(wave, 0)).toBeCloseTo(18, 9);
    expect(roomAt(wave, 720)).toBeCloseTo(22, 9);
  });
});
