import { describe, expect, it } from "vitest";
import type { AdviceInput, DecidedSetUp } from "../../src/advice/advice-input.ts";
import { nextTests } from "../../src/advice/next-tests.ts";
import type { NextTest } from "../../src/advice/next-types.ts";
import { expectedRun as expectLevel } from "../../src/advice/expected.ts";
import { testOutcomes } from "../../src/advice/test-outcomes.ts";
import { endedByPerson } from "../../src/culture/verdict.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer } from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";
import { asked } from "../culture/nights.ts";
import {
  adviceInput,
  advisedAll,
  cooker,
  failedTest,
  fixed,
  known,
  settledTest,
  step,
  type ConstructedInput,
} from "./constructed.ts";

// Constructed kitchens. How much a test is worth is this project's choice; what is
// checked is what follows from it.
const pen = (id: string, uncertainty: number): AdviceInput["thermometers"][number] => {
  const standardUncertainty = celsiusDifference(uncertainty);
  return {
    id,
    model: constantCorrection(correctedThermometer(celsiusDifference(0), standardUncertainty)),
  };
};

const swing = { peakToPeak: 0.4, periodMinutes: 25 };
const culture = (name: string, ...window: Parameters<typeof asked>): Requirement => ({
  ...asked(...window),
  culture: name,
});
const warm = culture("warm", 40, 44, 8);
const low = culture("low", 37, 39, 36);

const next = (of: ConstructedInput): readonly NextTest[] => {
  const input = adviceInput({ thermometers: [pen("pen", 0.05)], ...of });
  return nextTests(advisedAll(input), input);
};
const box = cooker({ id: "box", kind: "warming box", control: { kind: "fixed" } });
const inBox = { appliance: "box", setting: fixed };

describe("nextTests", () => {
  it("is empty where every culture has a proven set-up and no verdict is open", () => {
    const tests = [
      settledTest({ level: 42, setting: step(42), swing }),
      settledTest({ level: 38, setting: step(38), swing, hoursHeld: 36 }),
    ];
    const of = { requirements: [warm, low], tests };
    const words = adviceInput(of).setUps.flatMap(({ verdicts }) =>
      verdicts.map(({ verdict }) => verdict),
    );
    expect(words).toEqual(["holds", "misses", "misses", "holds"]);
    expect(next(of)).toEqual([]);
  });

  it("is empty without cultures, and without containers", () => {
    expect(next({ requirements: [] })).toEqual([]);
    expect(next({ requirements: [low], containers: [] })).toEqual([]);
  });

  it("asks for a first test where nothing was tested, and where all tests failed", () => {
    for (const tests of [[], [failedTest("a")]]) {
      const [first] = next({ requirements: [low], tests });
      expect(first).toMatchObject({ basis: "assumed", setUp: { setting: step(38) } });
    }
  });

  it("puts the culture that nothing holds yet before a verdict that is open", () => {
    // The box has the warm culture's verdict open, the cooker holds it already; nothing holds the low one.
    const tests = [
      settledTest({ id: "w", level: 42, setting: step(42), swing }),
      settledTest({ id: "b", level: 43.5, swing, ...inBox }),
    ];
    const of = { appliances: [box, cooker()], requirements: [warm, low], tests };
    const verdicts = adviceInput(of).setUps.map((one) => one.verdicts[0]!.verdict);
    expect(verdicts).toEqual(["holds", "unproven"]);
    const found = next(of);
    expect(found.length).toBeGreaterThan(1);
    expect(found[0]).toMatchObject({ setUp: { appliance: "cooker", setting: step(38) } });
    expect(found[0]!.served).toBeGreaterThan(0.5);
    expect(found[1]).toMatchObject({ setUp: { appliance: "box" }, served: 0 });
    expect(found[1]!.gain).toBeGreaterThan(0.1);
  });

  it("lists no more than five, most worth doing first", () => {
    const names = ["a", "b", "c", "d", "e", "f", "g"];
    const appliances = names.map((id) => cooker({ id, control: { kind: "fixed" } }));
    const tests = names.map((id, at) =>
      settledTest({ id, appliance: id, setting: fixed, level: 38.4 + 0.05 * at, swing }),
    );
    const found = next({ appliances, requirements: [culture("low", 37, 39, 12)], tests });
    expect(found).toHaveLength(5);
    const worth = found.map(({ gain, served }) => gain + 2 * served);
    expect(worth).toEqual(worth.toSorted((x, y) => y - x));
  });
});

describe("what a test is expected to decide", () => {
  const kitchens: readonly ConstructedInput[] = [
    { requirements: [warm, low] },
    { requirements: [warm, low], tests: [settledTest({ level: 38.6, swing })] },
    {
      requirements: [warm, low, culture("narrow", 37.5, 38.5, 12)],
      tests: [settledTest({ level: 38.2 })],
    },
    {
      appliances: [box, cooker()],
      requirements: [warm, low],
      tests: [settledTest({ level: 43.5, swing, ...inBox }), settledTest({ level: 38.7 })],
    },
  ];

  it("is never more than the verdicts that are open, nor than there are cultures", () => {
    for (const of of kitchens) {
      const input = adviceInput(of);
      for (const { setUp, gain, served, outcomes, basis } of next(of)) {
        const own = input.setUps.find(
          (one) =>
            one.setUp.appliance === setUp.appliance &&
            JSON.stringify(one.setUp.setting) === JSON.stringify(setUp.setting),
        );
        const open =
          basis === "tested"
            ? own!.verdicts.filter(({ verdict }) => verdict === "unproven").length
            : of.requirements.length;
        expect(gain).toBeGreaterThanOrEqual(0);
        expect(gain).toBeLessThanOrEqual(open);
        expect(served).toBeLessThanOrEqual(of.requirements.length);
        expect(outcomes.map((one) => one.culture)).toEqual(
          of.requirements.map((one) => one.culture),
        );
        for (const { holds, misses, now } of outcomes) {
          expect(holds + misses).toBeLessThanOrEqual(1 + 1e-12);
          expect(Math.min(holds, misses, now)).toBeGreaterThanOrEqual(0);
        }
      }
    }
  });

  it("counts nothing for a culture that is served already", () => {
    const tests = [
      settledTest({ level: 42, setting: step(42), swing }),
      settledTest({ level: 43.5, swing, ...inBox }),
    ];
    const found = next({ appliances: [box, cooker()], requirements: [warm], tests });
    expect(found.map(({ setUp, served }) => [setUp.appliance, served])).toEqual([["box", 0]]);
  });

  it("is less with a thermometer that leaves much open", () => {
    const served = (uncertainty: number): number =>
      next({ requirements: [low], thermometers: [pen("pen", uncertainty)] })[0]?.served ?? 0;
    expect(served(0.05)).toBeGreaterThan(served(0.4));
    // A window of 2 degC, and a standard uncertainty of half of it: no single test proves that it holds.
    expect(served(1)).toBe(0);
    expect(next({ requirements: [low], thermometers: [] })[0]?.served ?? 0).toBe(0);
  });
});

/** What another test of the only tested set-up is worth, a night or the whole hours: open and not served. */
const worthOf = (input: AdviceInput, whole: boolean): number => {
  const { response, shapeOf } = known(input.kitchen.appliances[0]!, input);
  const [{ setUp, mean, runToRun, scatter, verdicts }] = input.setUps as [DecidedSetUp];
  const { thermometer } = expectLevel(response, setUp);
  const soFar = {
    own: { mean: mean!, tests: 1 },
    expected: { mean: mean!, scale: runToRun, degreesOfFreedom: Infinity, room: 0, thermometer },
    shape: shapeOf(setUp),
    scatter,
    confidence: input.confidence,
  };
  expect(verdicts[0]!.verdict).toBe("unproven");
  const { holds, misses } = testOutcomes(
    soFar,
    shapeOf(setUp).outlook(input.requirements[0]!),
    whole,
  );
  return holds + misses + 2 * holds;
};

describe("how long a test lasts", () => {
  it("is a night where no culture asks for more", () => {
    const tests = [settledTest({ level: 38.5, swing, hoursHeld: 6 })];
    const requirements = [culture("low", 37, 39, 9)];
    for (const { hours, daytime } of next({ requirements, tests })) {
      expect(hours).toBe(10);
      expect(daytime).toBe(false);
    }
  });

  it("is the whole hours only where they promise 0.15 more than a night", () => {
    const seen = new Set<number>();
    const wide = culture("wide", 36.8, 39.2, 36);
    for (const hoursHeld of [5, 10]) {
      // A room nobody spoke of, and one that moves far by day.
      for (const batchRoom of [null, { low: 12, high: 28 }]) {
        const tests = [settledTest({ level: 38.8, hoursHeld, batchRoom })];
        const input = adviceInput({ requirements: [wide], tests });
        const [night, whole] = [false, true].map((is) => worthOf(input, is));
        const found = next({ requirements: [wide], tests }).find(
          ({ basis }) => basis === "tested",
        )!;
        const longer = whole! >= night! + 0.15;
        expect(found).toMatchObject({ hours: longer ? 36 : 10, daytime: longer });
        expect(found.gain + 2 * found.served).toBeCloseTo(longer ? whole! : night!, 12);
        seen.add(found.hours);
      }
    }
    expect(seen.size).toBe(2);
  });

  it("is the whole hours where the heat ended by itself: a night would decide nothing", () => {
    const tests = [settledTest({ level: 38, switchedOffAfter: 8, ...inBox })];
    const of = { appliances: [box], requirements: [low], tests };
    const [found] = next(of);
    expect(found).toMatchObject({ hours: 36, daytime: true, basis: "tested" });
    // It proves the box only if a person ended the other test.
    const [outcome] = found!.outcomes;
    expect(outcome!.holds).toBeGreaterThan(0);
    expect(outcome!.holds).toBeLessThanOrEqual(endedByPerson);
    // Hours that were seen before it ended need no such luck.
    const [short] = next({ ...of, requirements: [culture("low", 36, 38.4, 7)] });
    expect(short).toMatchObject({ hours: 10, daytime: false });
    expect(short!.outcomes[0]!.holds).toBeGreaterThan(endedByPerson);
  });
});

describe("how a test is to be done", () => {
  it("names the thermometer known best, judged for the culture it is likeliest to serve", () => {
    const thermometers = [pen("a", 0.3), pen("b", 0.14), pen("c", 0.2)];
    const wide = next({ requirements: [warm], thermometers });
    expect(wide[0]!.thermometer).toMatchObject({ id: "b", word: "good" });
    // 2 x 1.96 x 0.14 = 0.55: a quarter of 4 degC is more, of 2 degC less.
    const narrow = next({ requirements: [low], thermometers });
    expect(narrow[0]!.thermometer).toMatchObject({ id: "b", word: "usable" });
    expect(next({ requirements: [warm], thermometers: [] })[0]?.thermometer ?? null).toBeNull();
  });

  it("takes the interval from the swing that was seen", () => {
    const swinging = { peakToPeak: 0.8, periodMinutes: 30 };
    const tests = [settledTest({ level: 43.2, setting: step(42), swing: swinging })];
    const found = next({ requirements: [warm], tests });
    for (const { interval } of found) {
      expect(interval.loggerMinutes).toBe(2);
      expect(interval.swingMinutes).toBeCloseTo(30, 0);
    }
    expect(found.length).toBeGreaterThan(0);
    const [first] = next({ requirements: [low] });
    expect(first!.interval.swingMinutes).toBeNull();
  });
});
