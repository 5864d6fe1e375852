import { describe, expect, it } from "vitest";
import { verdictTruth } from "./case-truth.ts";
import { createRandom } from "./random.ts";
import type { Trace } from "./run.ts";
import {
  holdTimes,
  leavesRange,
  localRange,
  quantile,
  recoveredBy,
  settledCourse,
  truePhases,
} from "./truth.ts";

const traceOf = (fromSeconds: number, hours: number, food: (seconds: number) => number): Trace => {
  const count = hours * 360 + 1;
  const course = Float64Array.from({ length: count }, (_, at) => food(fromSeconds + at * 10));
  const none = new Float64Array(count);
  return { fromSeconds, stepSeconds: 10, food: course, bath: course, room: none, power: none };
};

/** Warm-up 22 to 41 degC with time constant 45 min. */
const warming = (seconds: number): number => 41 - 19 * Math.exp(-Math.max(0, seconds) / 2700);

const overshoot = (seconds: number): number =>
  warming(seconds) + (seconds > 3600 && seconds < 14_000 ? 4 : 0);

const falling = (seconds: number): number => 40 - seconds / 10_000;

describe("holdTimes", () => {
  it("starts the hold where a first-order warm-up comes within 0.5 degC", () => {
    // Closed form: 45 min x ln(19 / 0.5) = 163.691377 min; the grid of 10 s rounds up by less than a step.
    const run = traceOf(-600, 12, warming);
    const settled = settledCourse(
      run,
      traceOf(-86_400 - 600, 36, () => 41),
    );
    const times = holdTimes(run, settled, 40_000);
    for (const start of [times.start, times.startFirstEntry, times.startWithinHalfDegree]) {
      expect(start! / 60).toBeGreaterThan(163.691377);
      expect(start! / 60).toBeLessThan(163.691377 + 10 / 60);
    }
  });

  it("starts after an overshoot, though the range was entered before", () => {
    const run = traceOf(0, 12, overshoot);
    const settled = settledCourse(
      run,
      traceOf(-86_400, 36, () => 41),
    );
    const times = holdTimes(run, settled, 43_000);
    expect(times.start).toBe(14_000);
    expect(times.startFirstEntry!).toBeLessThan(14_000);
  });

  it("finds no start in a test that ends in its warm-up", () => {
    const run = traceOf(0, 12, warming);
    const settled = settledCourse(
      run,
      traceOf(-86_400, 36, () => 41),
    );
    expect(holdTimes(run, settled, 7200).start).toBeNull();
    expect(holdTimes(run, settled, 7200).startWithinHalfDegree).toBeNull();
  });

  it("follows a settled course that falls through the night", () => {
    const run = traceOf(0, 12, (seconds) => falling(seconds) - 20 * Math.exp(-seconds / 1800));
    const times = holdTimes(run, settledCourse(run, traceOf(-86_400, 36, falling)), 43_000);
    // Lowest within an hour: 0.36 degC below, so 20 exp(-t / 1800) = 0.86.
    expect(times.start).toBeGreaterThanOrEqual(1800 * Math.log(20 / 0.86) - 1);
    expect(times.start).toBeLessThan(1800 * Math.log(20 / 0.86) + 11);
  });
});

describe("localRange", () => {
  it("is the same as looking at every window", () => {
    const random = createRandom(1, "range");
    const course = Float64Array.from({ length: 300 }, () => random.normal(0, 1));
    const { low, high } = localRange(course, 17);
    course.forEach((_, at) => {
      const window = course.slice(Math.max(0, at - 17), at + 18);
      expect(low[at]).toBe(Math.min(...window));
      expect(high[at]).toBe(Math.max(...window));
    });
  });
});

describe("quantile", () => {
  it("interpolates between order statistics (definition 7 of Hyndman and Fan 1996)", () => {
    expect(quantile(Float64Array.of(4, 1, 3, 2), 0.25)).toBeCloseTo(1.75, 12);
    expect(quantile(Float64Array.of(4, 1, 3, 2), 1)).toBe(4);
  });
});

describe("verdictTruth", () => {
  // Sine of amplitude 1 about 40: time above mean + 0.5 is 1/2 - asin(0.5)/pi = 1/3.
  const sine = traceOf(0, 20, (seconds) => 40 + Math.sin((2 * Math.PI * seconds) / 3600));
  const asked = { low: 35, high: 40.5, ceiling: null, hours: 10, share: 0.6 };

  it("takes the share of the hours inside the window", () => {
    const truth = verdictTruth(sine, 3600, asked);
    expect(truth.insideShare).toBeCloseTo(2 / 3, 2);
    expect(truth.holds).toBe(true);
    expect(verdictTruth(sine, 3600, { ...asked, share: 0.7 }).holds).toBe(false);
  });

  it("fails where the ceiling is passed once", () => {
    expect(verdictTruth(sine, 3600, { ...asked, ceiling: 40.9 }).holds).toBe(false);
    expect(verdictTruth(sine, 3600, { ...asked, ceiling: 41.1 }).holds).toBe(true);
  });
});

describe("truePhases", () => {
  const plan = { logFrom: -1200, logTo: 40_000, switchOff: Infinity };
  const disturbances = {
    lidOpen: [[15_000, 15_300] as const],
    probeOut: [],
    powerCuts: [[20_000, 22_000] as const],
    pulledAt: 39_000,
  };

  it("are contiguous from the first reading to the last", () => {
    const hold = { start: 9000, end: 39_000 };
    const phases = truePhases(plan, hold, disturbances, new Map([[20_000, 24_000]]));
    expect(phases.map(({ kind }) => kind)).toEqual([
      "idle",
      "warm-up",
      "hold",
      "disturbance",
      "hold",
      "disturbance",
      "hold",
      "cool-down",
    ]);
    expect(phases.map(({ fromSeconds }) => fromSeconds)).toEqual([
      -1200, 0, 9000, 15_000, 15_300, 20_000, 24_000, 39_000,
    ]);
    expect(phases.at(-1)).toMatchObject({ cause: "probe-out", toSeconds: 40_000 });
    phases.slice(1).forEach((phase, at) => expect(phase.fromSeconds).toBe(phases[at]!.toSeconds));
  });

  it("hold nothing where no hold was reached", () => {
    const quiet = { lidOpen: [], probeOut: [], powerCuts: [], pulledAt: null };
    const phases = truePhases(plan, { start: null, end: 40_000 }, quiet, new Map());
    expect(phases.map(({ kind }) => kind)).toEqual(["idle", "warm-up"]);
  });
});

/** A dip of 5 degC at 10,000 s that heals with a time constant of 1800 s. */
const dip = (seconds: number): number =>
  40 - (seconds < 10_000 ? 0 : 5 * Math.exp(-(seconds - 10_000) / 1800));

/** 40 degC, and from 20,000 s on towards 20 degC with a time constant of 10,000 s. */
const cooling = (seconds: number): number =>
  seconds < 20_000 ? 40 : 20 + 20 * Math.exp(-(seconds - 20_000) / 10_000);

describe("leavesRange", () => {
  it("is when a cooling jar has lost half a degree", () => {
    // 10,000 ln(20 / 19.5) = 253.2 s.
    const settled = settledCourse(
      traceOf(0, 12, () => 40),
      traceOf(-86_400, 36, () => 40),
    );
    const left = leavesRange(traceOf(0, 12, cooling), settled, 20_000);
    expect(left).toBeGreaterThanOrEqual(20_253.2);
    expect(left).toBeLessThan(20_263.2);
  });
});

describe("recoveredBy", () => {
  it("is the last time outside the widened settled range", () => {
    const settled = settledCourse(
      traceOf(0, 12, () => 40),
      traceOf(-86_400, 36, () => 40),
    );
    const disturbed = traceOf(0, 12, dip);
    // 5 exp(-t / 1800) = 0.5 after 1800 ln 10 = 4144.7 s.
    const at = recoveredBy(disturbed, settled, [10_000, 10_600], 40_000);
    expect(Math.abs(at - 14_144.7)).toBeLessThan(10);
    expect(
      recoveredBy(
        traceOf(0, 12, () => 40),
        settled,
        [10_000, 10_600],
        40_000,
      ),
    ).toBe(10_600);
  });
});
