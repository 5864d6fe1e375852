import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { equivalentHours, growthOverHold } from "../../src/culture/growth-over-hold.ts";
import type { GrowthCourse } from "../../src/culture/growth-over-hold.ts";
import * as organisms from "../../src/culture/organisms.ts";
import type { Phase, PhaseKind } from "../../src/hold/hold.ts";
import { seededUniform } from "../stats/seeded-noise.ts";

// All courses here are constructed. With the limits 20, 40, 50 degC of S. thermophilus the model is
// the polynomial (50 - T)(T - 20)^2 / 4000, by hand, which can be integrated exactly.
const { thermophilus, bulgaricus } = organisms;
const polynomial = (celsius: number) => ((50 - celsius) * (celsius - 20) ** 2) / 4000;

const phase = (kind: PhaseKind, fromMinute: number, toMinute: number): Phase => ({
  kind,
  fromMinute,
  toMinute,
});

const courseOf = (
  minutes: readonly number[],
  temperature: (minute: number) => number,
  phases: readonly Phase[],
): GrowthCourse => ({
  minutes: Float64Array.from(minutes),
  celsius: Float64Array.from(minutes, temperature),
  phases,
});

const every = (step: number, to: number): readonly number[] =>
  Array.from({ length: Math.round(to / step) + 1 }, (_, index) => index * step);
/** Readings in the middle of each minute: each stands for just that minute. */
const midMinutes = (to: number): readonly number[] =>
  Array.from({ length: to }, (_, index) => index + 0.5);

/** A temperature that steps: each holds until its minute. */
const steps =
  (...levels: readonly (readonly [until: number, celsius: number])[]) =>
  (minute: number): number =>
    levels.find(([until]) => minute < until)![1];

/** 20 degC, from minute 50 on a fifth of a degC per minute, until 40. */
const straight = (minute: number): number => Math.min(40, 20 + Math.max(0, minute - 50) / 5);

/** Warm-up in a straight line, then a slow swing of 4 degC to either side. */
const swinging = (minute: number): number =>
  minute < 90 ? 22 + minute / 5 : 40 + 4 * Math.sin((minute - 90) / 80);

/** The formula of the model written anew, limits 22, 42.5, 52. */
const rate = (t: number): number =>
  ((t - 52) * (t - 22) ** 2) / (20.5 * (20.5 * (t - 42.5) + 9.5 * (64.5 - 2 * t)));
const slope = (t: number): number => (rate(t + 1e-4) - rate(t - 1e-4)) / 2e-4;

describe("growthOverHold", () => {
  it("is the model's rate where the temperature never changes", () => {
    const found = growthOverHold(
      courseOf(every(1, 600), () => 43, [phase("hold", 0, 600)]),
      thermophilus,
    )!;
    expect(found.meanRate).toBeCloseTo(polynomial(43), 12);
    expect(found.equivalentHours).toBeCloseTo(10 * polynomial(43), 12);
    expect(found.equivalentHoursInAll).toBe(found.equivalentHours);
    expect(found.lostToWarmUp).toBeNull();
    expect(found.lostToDisturbances).toBe(0);
  });

  it("loses half of a straight warm-up from the minimum to the optimum", () => {
    // The polynomial's mean over 20 .. 40 degC is exactly 1/2: 100 minutes of warm-up and 500 at the
    // optimum lose 50 of 600. Its slope is 0 at both ends, so the trapezoids err by less than 1e-6.
    const phases = [phase("idle", 0, 50), phase("warm-up", 50, 150), phase("hold", 150, 650)];
    const found = growthOverHold(courseOf(every(1, 650), straight, phases), thermophilus)!;
    expect(found.meanRate).toBeCloseTo(1, 12);
    expect(found.lostToWarmUp).toBeCloseTo(50 / 600, 7);
    expect(found.equivalentHours).toBeCloseTo(500 / 60, 10);
    expect(found.equivalentHoursInAll).toBeCloseTo(550 / 60, 6);
  });

  it("is the fine sum of a drifting hold, of an organism whose model is no polynomial", () => {
    // 10^6 midpoints of 36 .. 46 degC.
    let sum = 0;
    for (let step = 0; step < 1e6; step += 1) sum += rate(36 + (10 * (step + 0.5)) / 1e6);
    const drifting = courseOf(every(1, 600), (minute) => 36 + minute / 60, [phase("hold", 0, 600)]);
    // What trapezoids of 1/60 degC add by Euler and Maclaurin: h^2 / 12 times the change of slope, -3.1e-7.
    const trapezoids = ((1 / 60) ** 2 / 12) * ((slope(46) - slope(36)) / 10);
    expect(growthOverHold(drifting, bulgaricus)!.meanRate).toBeCloseTo(sum / 1e6 + trapezoids, 10);
  });

  it("weighs two levels with their times", () => {
    // 30 degC is worth 1/2, 40 degC 1, 45 degC 25/32.
    const levels = steps([150, 30], [450, 40], [600, 45]);
    const course = courseOf(midMinutes(600), levels, [phase("hold", 0, 600)]);
    const found = growthOverHold(course, thermophilus)!;
    expect(found.meanRate).toBeCloseTo((150 / 2 + 300 + (150 * 25) / 32) / 600, 12);
  });

  it("counts what disturbances cost apart from the hold", () => {
    const phases = [phase("hold", 0, 300), phase("disturbance", 300, 360), phase("hold", 360, 600)];
    const temperature = steps([300, 40], [360, 30], [600, 40]);
    const found = growthOverHold(courseOf(midMinutes(600), temperature, phases), thermophilus)!;
    expect(found.meanRate).toBeCloseTo(1, 12);
    expect(found.equivalentHours).toBeCloseTo(9, 12);
    expect(found.lostToDisturbances).toBeCloseTo((60 * 0.5) / 600, 12);
    expect(found.equivalentHoursInAll).toBeCloseTo(9.5, 12);
  });

  it("gains by a warm-up that dwells nearer the optimum than the hold", () => {
    const phases = [phase("warm-up", 0, 100), phase("hold", 100, 600)];
    const temperature = steps([100, 40], [600, 45]);
    const found = growthOverHold(courseOf(midMinutes(600), temperature, phases), thermophilus)!;
    expect(found.lostToWarmUp).toBeCloseTo((-100 * (7 / 32)) / (600 * (25 / 32)), 12);
  });

  it("leaves out what comes before and after", () => {
    const phases = [phase("idle", 0, 60), phase("hold", 60, 300), phase("cool-down", 300, 400)];
    const temperature = steps([60, 25], [300, 40], [400, 25]);
    const found = growthOverHold(courseOf(midMinutes(400), temperature, phases), thermophilus)!;
    expect(found.equivalentHoursInAll).toBeCloseTo(4, 12);
  });

  it("counts nothing for time without readings", () => {
    // Silent from minute 200 to 400: of that, 2.5 minutes belong to the readings on either side.
    const minutes = every(1, 600).filter((minute) => minute <= 200 || minute >= 400);
    const course = courseOf(minutes, () => 40, [phase("hold", 0, 600)]);
    const found = growthOverHold(course, thermophilus)!;
    expect(found.meanRate).toBeCloseTo(1, 12);
    expect(found.equivalentHours).toBeCloseTo((400 + 5) / 60, 12);
  });

  it("does not care how unevenly a night was sampled", () => {
    const phases = [phase("warm-up", 0, 90), phase("hold", 90, 690)];
    const even = growthOverHold(courseOf(every(0.25, 690), swinging, phases), thermophilus)!;
    const seeds = fc.integer({ min: 1, max: 1e6 });
    fc.assert(
      fc.property(seeds, (seed) => {
        const uniform = seededUniform(seed);
        const minutes = [0];
        while (minutes.at(-1)! < 687) {
          // Ten times as often while it is warm: a plain mean would see mostly that.
          const step = swinging(minutes.at(-1)!) > 41 ? 0.3 : 3;
          minutes.push(minutes.at(-1)! + step * (0.5 + uniform() / 2));
        }
        const found = growthOverHold(courseOf([...minutes, 690], swinging, phases), thermophilus)!;
        // Trapezoids of 3 min err by 9/12 of the rate's curvature: below 1e-4 per min^2 in the hold,
        // 6e-4 in the warm-up, which is an eighth of the time. At most 8.4e-5 in 3000 seeds.
        expect(Math.abs(found.meanRate - even.meanRate)).toBeLessThanOrEqual(2e-4);
        expect(Math.abs(found.lostToWarmUp! - even.lostToWarmUp!)).toBeLessThanOrEqual(2e-4);
        const plain = minutes
          .filter((minute) => minute >= 90)
          .map(swinging)
          .map(polynomial);
        const mean = plain.reduce((sum, one) => sum + one, 0) / plain.length;
        expect(Math.abs(mean - even.meanRate)).toBeGreaterThan(0.01);
      }),
      { numRuns: 25 },
    );
  });

  it("knows no shares where nothing grows in the hold", () => {
    const phases = [phase("warm-up", 0, 60), phase("hold", 60, 300)];
    const course = courseOf(every(1, 300), () => 55, phases);
    expect(growthOverHold(course, thermophilus)).toMatchObject({
      meanRate: 0,
      organism: thermophilus.organism,
      lostToWarmUp: null,
      lostToDisturbances: null,
    });
  });

  it("is null without limits to go by, and without a hold", () => {
    const held = courseOf(every(1, 60), () => 37, [phase("hold", 0, 60)]);
    expect(growthOverHold(held, organisms.reuteri)).toBeNull();
    expect(growthOverHold(held, organisms.cremoris)).toBeNull();
    expect(growthOverHold({ ...held, phases: [phase("warm-up", 0, 60)] }, thermophilus)).toBeNull();
    expect(
      growthOverHold(
        courseOf([], () => 37, []),
        thermophilus,
      ),
    ).toBeNull();
  });
});

describe("equivalentHours", () => {
  it("is the time at one temperature by the relative rate there", () => {
    expect(equivalentHours(thermophilus, 40, 8)).toBeCloseTo(8, 12);
    expect(equivalentHours(thermophilus, 30, 8)).toBeCloseTo(4, 12);
    expect(equivalentHours(thermophilus, 51, 8)).toBe(0);
    expect(equivalentHours(organisms.gasseri, 38, 36)).toBeNull();
  });

  it("agrees with a night that was held there", () => {
    fc.assert(
      fc.property(fc.double({ min: 15, max: 55, noNaN: true }), (celsius) => {
        const course = courseOf(every(2, 480), () => celsius, [phase("hold", 0, 480)]);
        const found = growthOverHold(course, thermophilus)!.equivalentHours;
        expect(equivalentHours(thermophilus, celsius, 8)).toBeCloseTo(found, 10);
      }),
    );
  });
});
