import { describe, expect, it } from "vitest";
import { createRandom } from "./random.ts";
import { isWithin, simulateRun, valueAt, type Appliance, type RunPlan } from "./run.ts";

const appliance: Appliance = {
  network: {
    capacities: [7200],
    links: [],
    losses: [1],
    openLosses: [3],
    surface: null,
    heated: 0,
  },
  control: { kind: "constant", power: 20 },
  sensor: { node: 0, lagSeconds: 10 },
  foodNode: 0,
  bathNode: 0,
};

const plan: RunPlan = {
  fromSeconds: -600,
  toSeconds: 36_000,
  switchOn: 0,
  switchOff: 28_800,
  powerCuts: [[14_400, 18_000]],
  lidOpen: [[21_600, 21_900]],
  initial: [20],
  room: () => 20,
};

const run = (change: Partial<RunPlan> = {}) =>
  simulateRun(appliance, { ...plan, ...change }, createRandom(1, "run"));

/** T = room + 20 (1 - exp(-t / 7200 s)) while on. */
const risen = (seconds: number): number => 20 + 20 * (1 - Math.exp(-seconds / 7200));

describe("simulateRun", () => {
  it("heats from switch-on, pauses in a power cut and stops at switch-off", () => {
    const trace = run();
    const food = (seconds: number): number => valueAt(trace, trace.food, seconds);
    expect(food(0)).toBe(20);
    expect(food(14_400)).toBeCloseTo(risen(14_400), 6);
    expect(food(18_000)).toBeCloseTo(20 + (risen(14_400) - 20) * Math.exp(-0.5), 6);
    expect(food(36_000)).toBeCloseTo(20 + (food(28_800) - 20) * Math.exp(-1), 6);
  });

  it("cools faster with the lid off: towards 20 + 20 / 4 with a quarter of the time constant", () => {
    const trace = run({ powerCuts: [] });
    const opened = risen(21_600);
    const expected = 25 + (opened - 25) * Math.exp(-300 / 1800);
    expect(valueAt(trace, trace.food, 21_900)).toBeCloseTo(expected, 6);
  });

  it("stays the same up to the first event", () => {
    const [quiet, disturbed] = [run({ powerCuts: [], lidOpen: [] }), run()];
    const steps = 15_000 / 10;
    expect(disturbed.food.slice(0, steps)).toEqual(quiet.food.slice(0, steps));
    expect(disturbed.food.at(-1)).not.toBe(quiet.food.at(-1));
  });
});

describe("valueAt", () => {
  it("is linear between steps and held beyond both ends", () => {
    const trace = run();
    expect(valueAt(trace, trace.food, -9999)).toBe(20);
    expect(valueAt(trace, trace.food, 99_999)).toBe(trace.food.at(-1));
    const middle = (valueAt(trace, trace.food, 100) + valueAt(trace, trace.food, 110)) / 2;
    expect(valueAt(trace, trace.food, 105)).toBeCloseTo(middle, 12);
  });
});

describe("isWithin", () => {
  it("takes the start in and leaves the end out", () => {
    const spells = [[10, 20] as const];
    expect([9, 10, 19, 20].map((time) => isWithin(spells, time))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});
