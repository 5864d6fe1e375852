import { describe, expect, it } from "vitest";
import type { ApplianceAdvice, CultureAdvice } from "../../src/advice/advice-types.ts";
import { analyseKitchen } from "../../src/kitchen-analysis.ts";
import type { Kitchen } from "../../src/kitchen/kitchen.ts";
import {
  jar,
  kitchenOf,
  nightText,
  opener,
  options,
  testFile,
  waterTest,
} from "../kitchen-analysis/small-kitchen.ts";

/**
 * Kitchens that say too little, or contradict themselves. All constructed; the
 * culture's window is 36.5..39.5 degC for 36 h. What is expected of each is what
 * caution asks, not a figure from elsewhere.
 */
const evening = (day: number): number => Date.UTC(2026, 2, day, 20);
const night = (level: number, day: number, hoursHeld = 36): string =>
  nightText({ level, startsAt: evening(day), hoursHeld });
const notReadings = "PK\u0003\u0004 nothing to read";

const adviceOn = async (kitchen: Kitchen, texts: Record<string, string> = {}) => {
  const outcome = await analyseKitchen(kitchen, options, opener(texts));
  if (!outcome.ok) throw new Error(outcome.problem.code);
  expect(strangeNumbers(outcome.value.advice, "advice")).toEqual([]);
  return outcome.value.advice;
};

/** Paths of numbers that are none; degrees of freedom alone may be infinite. */
const strangeNumbers = (value: unknown, path: string): readonly string[] => {
  if (typeof value === "number")
    return Number.isFinite(value) || (path.endsWith("degreesOfFreedom") && value === Infinity)
      ? []
      : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => strangeNumbers(one, `${path}.${key}`));
};

const cookerIn = ({ appliances }: { appliances: readonly ApplianceAdvice[] }): ApplianceAdvice =>
  appliances.find(({ appliance }) => appliance === "cooker")!;
const only = ({ cultures }: ApplianceAdvice): CultureAdvice => cultures[0]!;
const codes = ({ obstacles }: CultureAdvice): readonly string[] =>
  obstacles.map(({ code }) => code);
const widthAt = ({ curves }: ApplianceAdvice, celsius: number): number => {
  const point = curves[0]!.points.find(
    ({ setting }) => setting.kind === "step" && setting.celsius === celsius,
  );
  return point!.level.high - point!.level.low;
};

/** As many tests at 38 degC as there are levels, each with its own file. */
const testedAt38 = (levels: readonly number[]) => {
  const names = levels.map((_, index) => `night-${index + 1}`);
  return {
    kitchen: kitchenOf(names.map((name) => waterTest(name, [testFile(`${name}.csv`, [jar])]))),
    texts: Object.fromEntries(
      names.map((name, index) => [`${name}.csv`, night(levels[index]!, 1 + 5 * index)]),
    ),
  };
};

describe("a kitchen without tests", () => {
  it("promises nothing and asks for a first test", async () => {
    const advice = await adviceOn(kitchenOf([]));
    expect(advice.appliances).toHaveLength(2);
    for (const appliance of advice.appliances) {
      const said = only(appliance);
      expect(["may", "unknown"]).toContain(said.answer);
      expect(said.best?.basis).toBe("assumed");
      expect(said.change).toBe("first test");
      expect(said.from).toBeNull();
      expect(codes(said)).toContain("not-tested");
      expect(appliance.tests).toEqual([]);
      for (const { prior, now } of appliance.terms) {
        expect(now.mean).toBeCloseTo(prior.mean, 9);
        expect(now.standardDeviation).toBeCloseTo(prior.standardDeviation, 9);
      }
    }
    expect(advice.next.open).toEqual([]);
  });

  it("still says so where it has no containers, or no cultures, or no appliances", async () => {
    const bare = await adviceOn(kitchenOf([], { containers: [] }));
    for (const appliance of bare.appliances) {
      expect(only(appliance)).toMatchObject({ best: null, chance: null });
      expect(["cannot", "unknown"]).toContain(only(appliance).answer);
    }
    const idle = await adviceOn(kitchenOf([], { cultures: [] }));
    for (const { cultures } of idle.appliances) expect(cultures).toEqual([]);
    expect(idle.match.places).toEqual([]);
    const empty = await adviceOn(kitchenOf([], { appliances: [] }));
    expect(empty.appliances).toEqual([]);
    expect(empty.match.places.map(({ placed }) => placed)).toEqual([null]);
  });

  it("copes with a thermometer nobody described", async () => {
    const advice = await adviceOn(kitchenOf([], { thermometers: [], room: null }));
    expect(advice.next.tests.map(({ thermometer }) => thermometer)).toEqual(
      advice.next.tests.map(() => null),
    );
  });
});

describe("one test", () => {
  it("sharpens the setting it was made at most, and those around less the further off", async () => {
    const { kitchen, texts } = testedAt38([38.6]);
    const cooker = cookerIn(await adviceOn(kitchen, texts));
    const untested = cookerIn(await adviceOn(kitchenOf([])));
    expect(cooker.tests).toHaveLength(1);
    const widths = [38, 40, 45, 55].map((at) => widthAt(cooker, at));
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    expect(new Set(widths).size).toBe(4);
    for (const at of [38, 40, 45, 55])
      expect(widthAt(cooker, at)).toBeLessThan(widthAt(untested, at));
  });

  it("is carried to a setting nobody tested as an expectation, not as a proof", async () => {
    // A night 2.5 degC too warm: the settings that would serve are not tested.
    const { kitchen, texts } = testedAt38([42]);
    const said = only(cookerIn(await adviceOn(kitchen, texts)));
    expect(said.best?.basis).not.toBe("tested");
    expect(said.change).toBe("setting");
    expect(said.chance!.probability).toBeLessThan(1);
    expect(said.chance!.verdict).not.toBe("misses");
    expect(said.from?.setUp.setting).toEqual({ kind: "step", celsius: 38 });
    const to = said.best!.setUp.setting;
    // 4 degC down brings the level to the window's middle; a slope of 0.8 to 1.25 per degree asks for 3 to 5.
    expect(to.kind === "step" && to.celsius).toBeGreaterThanOrEqual(33);
    expect(to.kind === "step" && to.celsius).toBeLessThanOrEqual(35);
  });
});

describe("tests that contradict one another", () => {
  it("are said to, widen what is expected, and prove nothing", async () => {
    const apart = testedAt38([36.2, 40]);
    const agreeing = testedAt38([38, 38.2]);
    const cooker = cookerIn(await adviceOn(apart.kitchen, apart.texts));
    const calm = cookerIn(await adviceOn(agreeing.kitchen, agreeing.texts));
    expect(only(cooker).answer).not.toBe("can");
    expect(only(cooker).answer).not.toBe("cannot");
    expect(codes(only(cooker))).toContain("tests-disagree");
    expect(codes(only(calm))).not.toContain("tests-disagree");
    expect(cooker.scatter.now).toBeGreaterThan(cooker.scatter.prior);
    expect(widthAt(cooker, 38)).toBeGreaterThan(2 * widthAt(calm, 38));
  });
});

describe("only failed tests", () => {
  const names = ["torn", "gone", "short"];
  const kitchen = kitchenOf(names.map((name) => waterTest(name, [testFile(`${name}.csv`, [jar])])));
  const texts = { "torn.csv": notReadings, "short.csv": night(38, 3, 0) };

  it("leave what was assumed beforehand, and are named", async () => {
    const cooker = cookerIn(await adviceOn(kitchen, texts));
    const untested = cookerIn(await adviceOn(kitchenOf([])));
    expect(cooker.tests).toEqual([]);
    expect(cooker.terms).toEqual(untested.terms);
    expect(["may", "unknown"]).toContain(only(cooker).answer);
    expect(only(cooker).obstacles).toContainEqual(
      expect.objectContaining({ code: "only-failed-tests" }),
    );
    expect(codes(only(cooker))).not.toContain("not-tested");
  });

  it("give no verdict a change could be counted from", async () => {
    const said = only(cookerIn(await adviceOn(kitchen, texts)));
    expect(said.answer).not.toBe("can");
    expect(said.chance?.verdict ?? "unproven").toBe("unproven");
  });
});

describe("a setting that never changed", () => {
  it("tells the level there, and of the slope no more than was assumed", async () => {
    const { kitchen, texts } = testedAt38([38.9, 39.1, 39, 38.8]);
    const cooker = cookerIn(await adviceOn(kitchen, texts));
    expect(cooker.tests).toHaveLength(4);
    const slope = cooker.terms.find(({ term }) => term.code === "slope");
    expect(slope).toBeDefined();
    // Only through what it shares with the level at another temperature can the slope move at all.
    expect(slope!.now.standardDeviation / slope!.prior.standardDeviation).toBeGreaterThan(0.8);
    expect(Math.abs(slope!.now.mean - slope!.prior.mean)).toBeLessThan(
      slope!.prior.standardDeviation,
    );
    expect(widthAt(cooker, 50)).toBeGreaterThan(1.5 * widthAt(cooker, 38));
  });
});
