import { describe, expect, it } from "vitest";
import { analyseKitchen } from "../src/kitchen-analysis.ts";
import { normalCdf } from "../src/stats/normal.ts";
import type { KitchenAnalysis, TestAnalysis } from "../src/kitchen-analysis-types.ts";
import type { Kitchen } from "../src/kitchen/kitchen.ts";
import type { ThermometerCheck } from "../src/thermometer/thermometer.ts";
import {
  checkedPen,
  jar,
  kitchenOf,
  nightText,
  opener,
  options,
  testFile,
  uncheckedPen,
  waterTest,
} from "./kitchen-analysis/small-kitchen.ts";

const evening = (day: number, minute = 0): number => Date.UTC(2026, 2, day, 20, minute);
const bath = { name: "Bath", place: "bath", thermometer: "pen" } as const;

/** A repeated set-up, a test of two loggers, one with a file that is no logger's, one that is gone. */
const kitchen = kitchenOf([
  waterTest("again", [testFile("again.csv", [jar])]),
  waterTest("first", [testFile("first.csv", [jar])]),
  waterTest("gone", [testFile("gone.csv", [jar])]),
  waterTest("torn", [testFile("torn.csv", [jar])]),
  waterTest("both", [testFile("jar.csv", [jar]), testFile("bath.csv", [bath])], 41),
]);
const texts = {
  "first.csv": nightText({ level: 38.2, startsAt: evening(1) }),
  "again.csv": nightText({ level: 38.6, startsAt: evening(9) }),
  "torn.csv": "PK\u0003\u0004 nothing to read",
  "jar.csv": nightText({ level: 40.5, startsAt: evening(20, 14) }),
  "bath.csv": nightText({ level: 41, startsAt: evening(20), column: "Bath" }),
};
const analysed = async (one: Kitchen = kitchen, more = {}): Promise<KitchenAnalysis> => {
  const outcome = await analyseKitchen(one, { ...options, ...more }, opener(texts));
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
};
/** Of the kitchen above; the same for every check, so made once. */
const whole = analysed();
const testOf = ({ tests }: KitchenAnalysis, id: string): TestAnalysis =>
  tests.find(({ test }) => test.id === id)!;

const referenceAt = (reading: number) =>
  ({
    kind: "reference",
    truth: reading,
    truthUncertainty: null,
    readings: [reading],
    date: null,
    confirmed: false,
  }) as const;
/** One night of 36 h at a reading of 38.6 degC, by a thermometer with these checks. */
const read386 = async (checks: readonly ThermometerCheck[]): Promise<KitchenAnalysis> => {
  const text = nightText({ level: 38.6, startsAt: evening(1), hoursHeld: 36 });
  const one = kitchenOf([waterTest("one", [testFile("one.csv", [jar])])], {
    thermometers: [{ ...checkedPen, checks }],
  });
  const outcome = await analyseKitchen(one, options, opener({ "one.csv": text }));
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
};

/**
 * The jar reads 38.6 with a swing of 0.2; 5 % of a sine's time lies above 0.98769 of its amplitude
 * (arcsine law), so the window's 39.5 is met up to an offset of 39.5 - 38.7975 = 0.7025, and its
 * 36.5 (38.4025 - 36.5 = 1.9025) down to that. The offset is normal: run to run 0.3, the check's
 * doubt, and its display step 0.1 / sqrt(12) = 0.0289; reading step and mean are below 0.005.
 */
const probability = (check: number): number => {
  const doubt = Math.hypot(0.3, check, 0.0289);
  return normalCdf(0.7025 / doubt) - normalCdf(-1.9025 / doubt);
};

describe("analyseKitchen", () => {
  it("lists tests oldest first, those that could not be read with their problem", async () => {
    const { tests } = await whole;
    expect(tests.map(({ test, problem }) => [test.id, problem?.code ?? null])).toEqual([
      ["first", null],
      ["again", null],
      ["both", null],
      ["gone", "raw-file-missing"],
      ["torn", "file-binary"],
    ]);
    expect(tests[0]!.startedAt).toBe(evening(1));
  });

  it("corrects every probe by its thermometer", async () => {
    // The reference check by hand: 38.0 shown at 37.7, so -0.3; swings are whole cycles about the level.
    const { probes } = testOf(await whole, "first").analysis!;
    expect(probes[0]!.night.hold!.mean).toBeCloseTo(38.2 - 0.3, 1);
    expect(probes[0]!.thermometer.correction).toBeCloseTo(-0.3, 2);
    expect(probes[0]).toMatchObject({ thermometerId: "pen", thermometer: { from: "measured" } });
  });

  it("lets a verdict rest on the doubt that the check leaves at the hold", async () => {
    for (const truthUncertainty of [0.02, 0.3, 0.6]) {
      const checks = [{ ...referenceAt(38.6), truthUncertainty }];
      // oxlint-disable-next-line no-await-in-loop
      const { probes } = testOf(await read386(checks), "one").analysis!;
      const [verdict] = probes[0]!.verdicts;
      // 0.005: what 256 scenarios and 12 steps of the swing leave open.
      expect(Math.abs(verdict!.probability - probability(truthUncertainty))).toBeLessThan(0.005);
      expect(verdict!.uncertainty[0]).toMatchObject({
        source: "thermometer",
        standardUncertainty: expect.closeTo(Math.hypot(truthUncertainty, 0.0289), 3),
      });
    }
  });

  it("takes all tests of a set-up together, with the scatter they show", async () => {
    const { setUps } = await whole;
    expect(setUps.map(({ testIds }) => testIds)).toEqual([["first", "again"], ["both"]]);
    const [twice, once] = setUps;
    expect(twice!.mean).toBeCloseTo((37.9 + 38.3) / 2, 1);
    // By hand: the two means are 0.4 apart, so their squares sum to 0.08: (0.09 + 0.08) / 3 = 0.0567;
    // a future run about two: sqrt(0.0567 x 1.5) = 0.2915, about a single one of the other set-up 0.3367.
    expect(twice!.runToRun).toMatchObject({
      from: "measured",
      repeats: 1,
      value: expect.closeTo(0.2915, 2),
    });
    expect(once!.runToRun).toMatchObject({ from: "measured", value: expect.closeTo(0.3367, 2) });
    expect(testOf(await whole, "both").analysis!.runToRun).toEqual(once!.runToRun);
  });

  it("gives a set-up tested once the verdict of that test, several their common one", async () => {
    const found = await whole;
    const [twice, once] = found.setUps;
    expect(once!.verdicts).toEqual(testOf(found, "both").analysis!.probes[0]!.verdicts);
    const alone = ["first", "again"].map(
      (id) => testOf(found, id).analysis!.probes[0]!.verdicts[0]!.probability,
    );
    expect(twice!.verdicts).toHaveLength(1);
    // About 38.1 in a window of 36.5 to 39.5: nearer its middle than the warmer of the two.
    expect(twice!.verdicts[0]!.probability).toBeGreaterThan(Math.min(...alone));
    expect(twice!.verdicts[0]!.verdict).toBe("holds");
  });

  it("aligns two loggers by their clocks and finds how the food follows its bath", async () => {
    const both = testOf(await whole, "both");
    expect(both.startedAt).toBe(evening(20));
    const { probes } = both.analysis!;
    expect(probes.map(({ series }) => [series.name, series.minutes[0]])).toEqual([
      ["Jar", 14],
      ["Bath", 0],
    ]);
    expect(probes.map(({ verdicts }) => verdicts.length)).toEqual([1, 0]);
    expect(both.responses).toHaveLength(1);
    expect(both.responses[0]).toMatchObject({
      food: 0,
      bath: 1,
      response: { offset: { value: expect.closeTo(0.5, 1) } },
    });
  });

  it("assumes a thermometer for a probe nobody listed, and says so", async () => {
    const unlisted = kitchenOf([waterTest("first", [testFile("first.csv", [])])]);
    const { analysis } = testOf(await analysed(unlisted), "first");
    expect(analysis!.probes[0]).toMatchObject({
      thermometerId: null,
      thermometer: { from: "assumed", accuracy: 1 },
    });
    expect(analysis!.notices).toContainEqual({
      code: "probes-without-thermometer",
      facts: { probes: '"Jar"', accuracy: 1 },
    });
  });

  it("takes a listed probe that the file does not have for that test's problem", async () => {
    const jra = { ...jar, name: "Jra" };
    const found = await analysed(
      kitchenOf([
        waterTest("first", [testFile("first.csv", [jra])]),
        waterTest("again", [testFile("again.csv", [jar])]),
      ]),
    );
    expect(testOf(found, "first").problem).toMatchObject({ code: "listed-probe-missing" });
    expect(testOf(found, "again").problem).toBeNull();
  });

  it("lets a batch meet the room of the test and of the kitchen", async () => {
    const test = {
      ...waterTest("first", [testFile("first.csv", [jar])]),
      room: { low: 5, high: 9 },
    };
    expect(testOf(await analysed(kitchenOf([test])), "first").analysis!.room).toEqual({
      low: 5,
      high: 23,
    });
    expect(testOf(await whole, "first").analysis!.room).toEqual({ low: 18, high: 23 });
  });

  it("looks at one appliance when asked, and refuses one that is not there", async () => {
    const box = { ...waterTest("box", [testFile("first.csv", [jar])]), appliance: "box" };
    const two = kitchenOf([...kitchen.tests, { ...box, setting: { kind: "fixed" } }]);
    const found = await analysed(two, { appliance: "box" });
    expect(found.tests.map(({ test }) => test.id)).toEqual(["box"]);
    expect(found.setUps).toHaveLength(1);
    // The cooker's repeats say nothing about the box.
    expect(found.setUps[0]!.runToRun).toEqual({ value: 0.3, from: "assumed" });
    const refused = await analyseKitchen(two, { ...options, appliance: "oven" }, opener(texts));
    expect(refused).toMatchObject({ ok: false, problem: { code: "not-in-kitchen" } });
  });

  it("tells of thermometers that are not to be relied on", async () => {
    const { notices, thermometers } = await analysed(
      kitchenOf(kitchen.tests, { thermometers: [...kitchen.thermometers, uncheckedPen] }),
      { today: "2027-06-01" },
    );
    expect(thermometers.map(({ thermometer }) => thermometer.id)).toEqual(["pen", "spare"]);
    expect(notices.map(({ code }) => code)).toEqual(["check-old", "thermometer-unchecked"]);
  });

  it("has nothing to say of an empty kitchen, and does not fail on it", async () => {
    const empty = await analysed(kitchenOf([], { thermometers: [], cultures: [] }));
    expect(empty).toMatchObject({ tests: [], setUps: [], thermometers: [], notices: [] });
  });
});
