import { describe, expect, it } from "vitest";
import type { Obstacle } from "../../src/advice/advice-types.ts";
import { adviseAppliance } from "../../src/advice/appliance-advice.ts";
import { obstaclesFor } from "../../src/advice/obstacles.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import type { Appliance } from "../../src/kitchen/kitchen.ts";
import { asked } from "../culture/nights.ts";
import {
  adviceInput,
  cooker,
  failedTest,
  fixed,
  program,
  settledTest,
  step,
  type ConstructedInput,
} from "./constructed.ts";

// Constructed appliances, each with one fault that is known.
const obstaclesOf = (
  appliance: Appliance,
  requirement: Requirement,
  more: Omit<ConstructedInput, "requirements" | "appliances"> = {},
): readonly Obstacle[] => {
  const input = adviceInput({ ...more, appliances: [appliance], requirements: [requirement] });
  const { known, candidates, choices } = adviseAppliance(appliance, input);
  return obstaclesFor(known, candidates, choices[0]!, requirement);
};

const fixedBox = cooker({ control: { kind: "fixed" } });
const steps = (low: number, high: number, by: number): Appliance =>
  cooker({ control: { kind: "steps", low, high, step: by } });
const window = asked(37, 39, 12);
const swing = { peakToPeak: 0.4, periodMinutes: 25 };

describe("an appliance that has nothing against it", () => {
  it("is given no obstacle where its best set-up holds", () => {
    const tests = [settledTest({ level: 38, swing })];
    expect(obstaclesOf(cooker(), window, { tests })).toEqual([]);
  });

  it("is given none for its faults elsewhere", () => {
    // The box holds; that another of its programs is far too warm does not matter.
    const programs = cooker({ control: { kind: "programs", programs: ["low", "high"] } });
    const tests = [
      settledTest({ level: 38, setting: program("low") }),
      settledTest({ level: 48, setting: program("high") }),
    ];
    expect(obstaclesOf(programs, window, { tests })).toEqual([]);
  });
});

describe("an appliance whose own test stands alone", () => {
  it("is told so where one night holds and the room it follows goes far beyond that night", () => {
    const room = { low: 12, high: 30 };
    const follows = cooker({ control: { kind: "fixed" }, thermostat: false });
    const found = obstaclesOf(follows, asked(36, 40, 12), {
      tests: [
        settledTest({
          level: 38,
          setting: fixed,
          room: { mean: 21, standardDeviation: 0.3 },
          batchRoom: room,
        }),
      ],
      room,
    });
    expect(found).toContainEqual(expect.objectContaining({ code: "stands-alone" }));
  });
});

describe("an appliance nobody knows", () => {
  it("was not tested", () => {
    expect(obstaclesOf(cooker(), window)).toEqual([{ code: "not-tested" }]);
    const elsewhere = [settledTest({ level: 38, appliance: "other" })];
    expect(obstaclesOf(cooker(), window, { tests: elsewhere })).toEqual([{ code: "not-tested" }]);
  });

  it("has only tests that failed, and how many", () => {
    const tests = [failedTest("a"), failedTest("b"), failedTest("c", { appliance: "other" })];
    expect(obstaclesOf(cooker(), window, { tests })).toEqual([
      { code: "only-failed-tests", tests: 2 },
    ]);
  });
});

describe("an appliance whose settings miss the window", () => {
  it("is too warm at its lowest, by so much", () => {
    const tests = [
      settledTest({ level: 42, setting: step(40), swing }),
      settledTest({ level: 46.5, setting: step(45), swing }),
    ];
    expect(obstaclesOf(steps(40, 50, 1), window, { tests })).toEqual([
      {
        code: "too-warm-at-lowest",
        setUp: { appliance: "cooker", setting: step(40), container: "jars" },
        mean: expect.closeTo(42, 1),
        by: expect.closeTo(3, 1),
      },
    ]);
  });

  it("is too cold at its highest, by so much", () => {
    const tests = [
      settledTest({ level: 33, setting: step(34), swing }),
      settledTest({ level: 28.5, setting: step(30), swing }),
    ];
    expect(obstaclesOf(steps(30, 34, 1), window, { tests })).toEqual([
      {
        code: "too-cold-at-highest",
        setUp: { appliance: "cooker", setting: step(34), container: "jars" },
        mean: expect.closeTo(33, 1),
        by: expect.closeTo(4, 1),
      },
    ]);
  });

  it("has no setting between two that lie on either side", () => {
    const tests = [
      settledTest({ level: 35, setting: step(35), swing }),
      settledTest({ level: 41, setting: step(41), swing }),
    ];
    expect(obstaclesOf(steps(29, 47, 6), window, { tests })).toEqual([
      {
        code: "settings-too-coarse",
        below: {
          setUp: expect.objectContaining({ setting: step(35) }),
          mean: expect.closeTo(35, 1),
        },
        above: {
          setUp: expect.objectContaining({ setting: step(41) }),
          mean: expect.closeTo(41, 1),
        },
      },
    ]);
  });

  it("says nothing of programs nobody tested", () => {
    // The one tested is too warm; what the other does is anyone's guess, and no obstacle.
    const programs = cooker({ control: { kind: "programs", programs: ["low", "high"] } });
    const tests = [settledTest({ level: 48, setting: program("high") })];
    const found = obstaclesOf(programs, window, { tests });
    for (const one of found) {
      if ("setUp" in one) expect(one.setUp.setting).toEqual(program("high"));
    }
  });
});

const box = (of: Parameters<typeof settledTest>[0], requirement = window) =>
  obstaclesOf(fixedBox, requirement, { tests: [settledTest({ setting: fixed, ...of })] });

describe("an appliance of the right level", () => {
  it("swings too widely", () => {
    const of = { level: 38, swing: { peakToPeak: 3, periodMinutes: 40 } };
    const { peakToPeak } = settledTest(of).settled.evidence.hold.swing!;
    expect(peakToPeak).toBeGreaterThan(2.7);
    expect(box(of)).toEqual([{ code: "swings-too-wide", peakToPeak, windowWidth: 2 }]);
  });

  it("has a band too wide from a swing and a slow change, neither of them too wide alone", () => {
    const of = { level: 38, swing: { peakToPeak: 1.7, periodMinutes: 25 }, driftPerHour: 0.08 };
    const found = box(of, asked(37, 39, 14));
    expect(found).toEqual([
      { code: "band-too-wide", bandWidth: expect.any(Number), windowWidth: 2 },
    ]);
    // 1.7 of the swing and 14 h of 0.08 degC an hour, less what the middle 95 % leaves out.
    const [one] = found;
    const bandWidth = one?.code === "band-too-wide" ? one.bandWidth : NaN;
    expect(bandWidth).toBeGreaterThan(2.1);
    expect(bandWidth).toBeLessThan(1.7 + 14 * 0.08);
  });

  it("drifts too far for the hours, although not over the night", () => {
    const of = { level: 38, driftPerHour: 0.1 };
    expect(box(of, asked(37, 39, 36))).toEqual([
      { code: "drifts", perHour: expect.closeTo(0.1, 2) },
    ]);
    expect(box(of, asked(37, 39, 12)).map(({ code }) => code)).not.toContain("drifts");
  });

  it("is not said to drift where the night leaves that open", () => {
    // Not quite two slow waves: a slope in the readings, and an interval about it that takes zero in.
    const of = {
      level: 38,
      hoursHeld: 4,
      stepMinutes: 20,
      swing: { peakToPeak: 0.6, periodMinutes: 130 },
    };
    const { drift } = settledTest(of).settled.evidence.hold;
    expect(drift.low).toBeLessThan(0);
    expect(drift.high).toBeGreaterThan(0);
    expect(Math.abs(drift.perHour) * 48).toBeGreaterThan(1);
    expect(box(of, asked(37.5, 38.5, 48)).map(({ code }) => code)).not.toContain("drifts");
  });

  it("passes the ceiling", () => {
    const of = { level: 38, swing };
    const found = box(of, asked(37, 39, 12, 38.5));
    expect(found).toEqual([{ code: "passes-ceiling", ceiling: 38.5, risk: expect.any(Number) }]);
    const [one] = found;
    // 38.2 at its highest: 0.3 degC below, one standard deviation of run to run, so some 16 %.
    expect(one?.code === "passes-ceiling" && one.risk).toBeGreaterThan(0.1);
    expect(one?.code === "passes-ceiling" && one.risk).toBeLessThan(0.25);
  });

  it("ends its heat before the hours are over", () => {
    const found = box({ level: 38, switchedOffAfter: 8 });
    expect(found).toEqual([{ code: "fell-away", afterHours: expect.closeTo(8, 0), needed: 12 }]);
    expect(box({ level: 38, switchedOffAfter: 8 }, asked(37, 39, 6))).toEqual([]);
  });

  it("holds otherwise in another test of the same set-up", () => {
    const tests = [36.5, 39.5].map((level) =>
      settledTest({ id: `at ${level}`, level, setting: fixed }),
    );
    expect(obstaclesOf(fixedBox, asked(36, 40, 12), { tests })).toEqual([
      {
        code: "tests-disagree",
        setUp: { appliance: "cooker", setting: fixed, container: "jars" },
        spread: expect.closeTo(3, 1),
      },
    ]);
  });

  it("is told its obstacles most telling first", () => {
    const found = box(
      { level: 42, swing: { peakToPeak: 3, periodMinutes: 40 }, switchedOffAfter: 8 },
      asked(37, 39, 12, 41),
    );
    expect(found.map(({ code }) => code)).toEqual([
      "too-warm-at-lowest",
      "swings-too-wide",
      "fell-away",
      "passes-ceiling",
    ]);
  });
});
