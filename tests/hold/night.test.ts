import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNight } from "../../src/hold/night.ts";
import {
  approachNight,
  coolingFrom,
  interrupted,
  logged,
  rampHoldReached,
  rampNight,
  sawtooth,
  swinging,
} from "./constructed.ts";
import type { Course, Sampling } from "./constructed.ts";

const usual = { until: 720, noise: 0.05, resolution: 0.1 };
const nightOf = (course: Course, sampling: Sampling = usual) =>
  readNight(logged(course, sampling), { share: 0.95 });
const kinds = (course: Course, sampling: Sampling = usual) =>
  nightOf(course, sampling).phases.map(({ kind }) => kind);

const overshooting: Course = (m) =>
  rampNight(m) + (m > 112 ? 2.5 * Math.sin(Math.min(1, (m - 112) / 60) * Math.PI) : 0);

const drifting: Course = (m) => rampNight(m) - (m > 112 ? (2 * (m - 112)) / 600 : 0);

describe("readNight on constructed nights", () => {
  it("reads idle, warm-up and hold of a thermostat's ramp", () => {
    const { phases, hold, warmUp } = nightOf(rampNight);
    expect(phases.map(({ kind }) => kind)).toEqual(["idle", "warm-up", "hold"]);
    expect(Math.abs(phases[1]!.fromMinute - 60)).toBeLessThan(4);
    expect(Math.abs(hold!.fromMinute - rampHoldReached)).toBeLessThan(5);
    expect(hold!.toMinute).toBe(720);
    expect(Math.abs(hold!.mean - 41)).toBeLessThan(0.02);
    expect(warmUp!.timeConstantMinutes).toBeNull();
    expect(hold!.swing).toBeNull();
  });

  it("reads a first-order warm-up: within 0.5 degC of the end after tau ln(range / 0.5)", () => {
    // Constructed: 22 -> 41 degC, tau 45 min, within 0.5 K after 163.69 min.
    const { hold, warmUp } = nightOf((m) => 41 - 19 * Math.exp(-m / 45));
    expect(Math.abs(hold!.fromMinute - 163.691377)).toBeLessThan(10);
    expect(Math.abs(warmUp!.timeConstantMinutes! / 45 - 1)).toBeLessThan(0.03);
    expect(warmUp!.timeConstantUncertainty!).toBeGreaterThan(0);
  });

  it("reads a slow jar of two hours", () => {
    const { hold } = nightOf(approachNight(120), { ...usual, until: 1200 });
    expect(Math.abs(hold!.fromMinute - 120 * Math.log(42))).toBeLessThan(20);
  });

  it.each([
    [5, 0.4],
    [20, 1],
    [45, 3],
    [90, 5],
  ])("takes a swing of %d min and %d degC for hold, not for disturbances", (period, height) => {
    const course = swinging(rampNight, sawtooth(period, height, 0.25), 110);
    const { phases, hold } = nightOf(course);
    expect(phases.map(({ kind }) => kind)).toEqual(["idle", "warm-up", "hold"]);
    expect(Math.abs(hold!.fromMinute - rampHoldReached)).toBeLessThan(15);
    expect(Math.abs(hold!.swing!.periodMinutes / period - 1)).toBeLessThan(0.05);
  });

  it("starts the hold after an overshoot larger than the swing", () => {
    const { hold, peak } = nightOf(overshooting);
    // 2.5 sin(pi x) is back below 0.5 degC at x = 0.936, minute 168.
    expect(Math.abs(hold!.fromMinute - 168)).toBeLessThan(8);
    expect(Math.abs(peak! - 43.5)).toBeLessThan(0.15);
  });

  it("finds the switch-off and calls it so", () => {
    for (const tau of [120, 300, 700]) {
      const { phases, hold } = nightOf(coolingFrom(rampNight, 500, tau));
      expect(phases.at(-1)).toMatchObject({ kind: "cool-down", cause: "switched-off" });
      expect(Math.abs(hold!.toMinute - 500)).toBeLessThan(6);
    }
  });

  it("finds the probe pulled out", () => {
    const { phases, hold } = nightOf(coolingFrom(rampNight, 700, 3));
    expect(phases.at(-1)).toMatchObject({ kind: "cool-down", cause: "probe-out" });
    expect(Math.abs(hold!.toMinute - 700)).toBeLessThan(3);
  });

  it("sets a lifted lid apart and goes on holding", () => {
    const { phases, hold } = nightOf(interrupted(rampNight, 400, 6, 60, 8));
    expect(phases.map(({ kind }) => kind)).toEqual([
      "idle",
      "warm-up",
      "hold",
      "disturbance",
      "hold",
    ]);
    const lid = phases[3]!;
    expect(lid.cause).toBe("lid-lifted");
    expect(Math.abs(lid.fromMinute - 400)).toBeLessThan(4);
    expect(lid.toMinute).toBeGreaterThan(412);
    expect(lid.toMinute).toBeLessThan(450);
    expect(hold!.hours).toBeCloseTo(
      (720 - hold!.fromMinute - lid.toMinute + lid.fromMinute) / 60,
      6,
    );
    expect(Math.abs(hold!.mean - 41)).toBeLessThan(0.03);
  });

  it("sets a power cut apart, also in a swinging hold", () => {
    const held = swinging(rampNight, sawtooth(30, 1, 0.3), 110);
    const { phases } = nightOf(interrupted(held, 350, 50, 300, 25));
    const cut = phases.find(({ kind }) => kind === "disturbance")!;
    expect(phases.filter(({ kind }) => kind === "disturbance")).toHaveLength(1);
    expect(cut.cause).toBe("power-cut");
    expect(Math.abs(cut.fromMinute - 350)).toBeLessThan(12);
    expect(cut.toMinute).toBeGreaterThan(400);
  });

  it("keeps a drift of 2 degC over the night in the hold", () => {
    const { phases, hold } = nightOf(drifting);
    expect(phases.map(({ kind }) => kind)).toEqual(["idle", "warm-up", "hold"]);
    expect(Math.abs(hold!.fromMinute - rampHoldReached)).toBeLessThan(10);
    expect(Math.abs(hold!.drift.perHour + 0.2)).toBeLessThan(0.01);
  });

  it("reads a log that starts in the hold, or in the warm-up", () => {
    expect(kinds(() => 41)).toEqual(["hold"]);
    expect(kinds(approachNight(30, -30))).toEqual(["warm-up", "hold"]);
  });

  it("sees no hold in a room, and none in a rise or a fall only", () => {
    expect(kinds((m) => 20.5 + 0.3 * Math.sin(m / 200))).toEqual(["idle"]);
    expect(nightOf((m) => 20 + m / 40).hold).toBeNull();
    expect(kinds((m) => 20 + m / 40).at(-1)).toBe("warm-up");
    expect(nightOf((m) => 20 + 25 * Math.exp(-m / 200)).hold).toBeNull();
  });

  it("takes a mild hold after a rise, or with a thermostat's swing, for one", () => {
    expect(kinds((m) => Math.min(25, 20 + 0.1 * m)).slice(-2)).toEqual(["warm-up", "hold"]);
    expect(kinds((m) => 24 + sawtooth(25, 0.8)(m))).toEqual(["hold"]);
  });

  it("reads eight hand readings", () => {
    const minutes = Float64Array.of(0, 35, 75, 135, 200, 320, 440, 500);
    const celsius = Float64Array.of(20, 33, 40.5, 41, 40.5, 41, 41, 40.5);
    const { phases, hold } = readNight({ minutes, celsius, resolution: 0.5 }, { share: 0.95 });
    expect(phases.map(({ kind }) => kind)).toEqual(["warm-up", "hold"]);
    expect(hold!.fromMinute).toBeGreaterThan(35);
    expect(hold!.fromMinute).toBeLessThanOrEqual(75);
    expect(hold!.readings).toBe(6);
    expect(Math.abs(hold!.mean - 40.8)).toBeLessThan(0.1);
  });

  it("has no phases for no readings and never fails on a few", () => {
    const empty = { minutes: new Float64Array(0), celsius: new Float64Array(0), resolution: 0.1 };
    expect(readNight(empty, { share: 0.95 }).phases).toEqual([]);
    for (let count = 1; count < 6; count += 1) {
      const night = nightOf(() => 41, { until: (count - 1) * 60, step: 60 });
      expect(night.phases.length).toBeGreaterThan(0);
    }
  });
});

const everyOther = (values: Float64Array): Float64Array =>
  values.filter((_, index) => index % 2 === 0);

describe("readNight keeps its answer", () => {
  const course = coolingFrom(swinging(approachNight(25, 40), sawtooth(35, 0.8), 140), 600, 250);
  const log = logged(course, { ...usual, until: 800 });
  const first = readNight(log, { share: 0.95 });

  it("under a shift of temperature", () => {
    fc.assert(
      fc.property(fc.integer({ min: -5, max: 30 }), (shift) => {
        const moved = readNight(
          { ...log, celsius: log.celsius.map((v) => v + shift) },
          { share: 0.95 },
        );
        expect(Math.abs(moved.hold!.fromMinute - first.hold!.fromMinute)).toBeLessThan(1e-6);
        expect(Math.abs(moved.hold!.toMinute - first.hold!.toMinute)).toBeLessThan(1.1);
        expect(moved.hold!.mean - shift).toBeCloseTo(first.hold!.mean, 6);
        expect(moved.hold!.standardDeviation).toBeCloseTo(first.hold!.standardDeviation, 6);
      }),
      { numRuns: 10 },
    );
  });

  it("under a shift of time", () => {
    const late = { ...log, minutes: log.minutes.map((m) => m + 1000) };
    const moved = readNight(late, { share: 0.95 });
    expect(Math.abs(moved.hold!.fromMinute - 1000 - first.hold!.fromMinute)).toBeLessThan(1e-6);
    expect(moved.hold!.hours).toBeCloseTo(first.hold!.hours, 6);
  });

  it("when every other reading is left out", () => {
    const thin = {
      minutes: everyOther(log.minutes),
      celsius: everyOther(log.celsius),
      resolution: 0.1,
    };
    const moved = readNight(thin, { share: 0.95 });
    expect(Math.abs(moved.hold!.fromMinute - first.hold!.fromMinute)).toBeLessThan(6);
    expect(Math.abs(moved.hold!.toMinute - first.hold!.toMinute)).toBeLessThan(6);
    expect(Math.abs(moved.hold!.mean - first.hold!.mean)).toBeLessThan(0.03);
  });

  it("in phases that are contiguous and in order, whatever the log", () => {
    const reading = fc.record({
      step: fc.double({ min: 0.1, max: 90, noNaN: true }),
      value: fc.double({ min: 0, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 60 }), (readings) => {
        let at = 0;
        const minutes = Float64Array.from(readings, ({ step }) => (at += step));
        const celsius = Float64Array.from(readings, ({ value }) => value);
        const { phases, hold, holdReadings } = readNight(
          { minutes, celsius, resolution: 0.1 },
          { share: 0.95 },
        );
        expect(phases[0]!.fromMinute).toBe(minutes[0]);
        expect(phases.at(-1)!.toMinute).toBe(minutes.at(-1));
        phases.slice(1).forEach((phase, index) => {
          expect(phase.fromMinute).toBe(phases[index]!.toMinute);
        });
        if (hold === null) return;
        const total = holdReadings!.weights.reduce((sum, weight) => sum + weight, 0);
        expect(total / 60).toBeCloseTo(hold.hours, 9);
        expect(holdReadings!.weights.every((weight) => weight >= 0)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});
