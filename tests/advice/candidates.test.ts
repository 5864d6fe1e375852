import { describe, expect, it } from "vitest";
import { basisOf, candidatesOf } from "../../src/advice/candidates.ts";
import { setUpKey } from "../../src/kitchen/set-up.ts";
import { fraction } from "../../src/quantity.ts";
import { asked } from "../culture/nights.ts";
import {
  adviceInput,
  basin,
  cooker,
  failedTest,
  jars,
  known,
  program,
  settledTest,
  step,
  type ConstructedTest,
} from "./constructed.ts";

const requirements = [asked(37, 39, 12), asked(40, 42, 24)];
const rack = {
  id: "rack",
  name: "Rack",
  stands: "jars in air",
  volume: 0.25,
  count: 8,
  changedOn: null,
} as const;
const knownOf = (tests: readonly ConstructedTest[], appliance = cooker()) =>
  known(
    appliance,
    adviceInput({
      appliances: [appliance],
      requirements,
      containers: [jars, basin, rack],
      tests: tests.map((one, at) => settledTest({ id: `${at}`, ...one })),
    }),
  );
const setUp = (setting: number, container = "jars") => ({
  appliance: "cooker",
  setting: step(setting),
  container,
});

const bathOnly = (container: string) =>
  candidatesOf(knownOf([{ level: 38, setting: step(38), container, place: "bath" }])).find(
    (one) => setUpKey(one.setUp) === setUpKey(setUp(38, container)),
  )!;

describe("candidatesOf", () => {
  it("offers every setting with every container that may stand there, each once", () => {
    const all = candidatesOf(knownOf([]));
    expect(all).toHaveLength(16 * 3);
    expect(new Set(all.map((one) => setUpKey(one.setUp))).size).toBe(all.length);
    const bath = candidatesOf(knownOf([], cooker({ kind: "water bath" })));
    expect(new Set(bath.map((one) => one.setUp.container))).toEqual(new Set(["jars", "basin"]));
  });

  it("gives a tested set-up its own verdicts", () => {
    const knows = knownOf([{ level: 38, setting: step(38) }]);
    const tested = candidatesOf(knows).find(({ basis }) => basis === "tested")!;
    expect(tested.setUp).toEqual(setUp(38));
    expect(tested.chances).toEqual(
      knows.input.setUps[0]!.verdicts.map(({ probability, ceilingRisk, verdict }) => ({
        probability,
        ceilingRisk,
        verdict,
      })),
    );
    expect(tested.level!.mean).toBeCloseTo(38, 2);
  });

  it("keeps what was seen where a set-up's own test never settled", () => {
    // It never came near the window, whatever the other test lets expect of that setting.
    const missed = requirements.map((requirement) => ({
      requirement,
      verdict: "misses" as const,
      probability: fraction(0.01),
      ceilingRisk: null,
      dwell: null,
      uncertainty: [],
      reasons: [{ code: "never-reached" as const, low: requirement.low, peak: 33 }],
    }));
    const scatter = { deviation: 0.2, repeats: 0 };
    const cold = { setUp: setUp(38), testIds: ["cold"], mean: null, runToRun: 0.3, scatter };
    const of = (verdicts: typeof missed) =>
      candidatesOf(
        known(
          cooker(),
          adviceInput({
            requirements,
            tests: [failedTest("cold"), settledTest({ level: 34, setting: step(34) })],
            setUps: [{ ...cold, verdicts }],
          }),
        ),
      ).find((one) => setUpKey(one.setUp) === setUpKey(setUp(38)))!;
    expect(of(missed)).toMatchObject({ basis: "tested", testIds: ["cold"], level: null });
    expect(of(missed).chances[0]).toEqual({
      probability: 0.01,
      ceilingRisk: null,
      verdict: "misses",
    });
    // Nothing could be judged of it.
    expect(of([])).toMatchObject({ basis: "extrapolated" });
    expect(of([]).chances).toHaveLength(requirements.length);
  });

  it("does not take a bath's test for the food's, unless the food is the bath", () => {
    expect(bathOnly("basin").basis).toBe("tested");
    expect(bathOnly("rack").basis).toBe("extrapolated");
    // A rack in air stands about 8 % of bath minus room below its bath (assumed).
    expect(bathOnly("rack").level!.mean).toBeLessThan(37.5);
  });

  it("does not share a verdict that the rest of what is known speaks against", () => {
    const others = [35, 35.1, 34.9, 35].map((level) => ({
      level,
      setting: step(38),
      container: "basin",
    }));
    const lucky = { level: 38, setting: step(38) };
    const knows = knownOf([lucky, ...others]);
    const tested = (container: string) =>
      candidatesOf(knows).find((one) => setUpKey(one.setUp) === setUpKey(setUp(38, container)))!;
    const verdict = knows.input.setUps.find((one) => one.setUp.container === "jars")!.verdicts[0]!;
    expect(verdict.verdict).toBe("holds");
    expect(tested("jars").chances[0]).toMatchObject({ verdict: "unproven" });
    expect(tested("jars").chances[0]!.probability).toBeLessThan(0.9);
    expect(tested("basin").chances[0]!.verdict).toBe("misses");
  });

  it("predicts the others, likelier where the level lies in the window", () => {
    const all = candidatesOf(knownOf([{ level: 38, setting: step(38) }]));
    const chance = (setting: number): number =>
      all.find((one) => setUpKey(one.setUp) === setUpKey(setUp(setting)))!.chances[1]!.probability;
    expect(chance(41)).toBeGreaterThan(0.9);
    expect(chance(41)).toBeGreaterThan(chance(40));
    expect(chance(36)).toBeLessThan(0.01);
  });

  it("puts the band about the expected level", () => {
    const swing = { peakToPeak: 1, periodMinutes: 30 };
    const all = candidatesOf(knownOf([{ level: 38, setting: step(38), swing }]));
    for (const { level, band } of all.filter((one) => one.setUp.container === "jars")) {
      expect((band!.low + band!.high) / 2).toBeCloseTo(level!.mean, 1);
      expect(band!.high - band!.low).toBeCloseTo(1, 1);
    }
  });

  it("keeps a set-up whose tests never settled without a level where it was judged", () => {
    const input = adviceInput({
      requirements,
      tests: [failedTest("dead")],
      setUps: [],
    });
    const all = candidatesOf(known(cooker(), input));
    expect(all.every(({ basis }) => basis === "assumed")).toBe(true);
  });
});

describe("basisOf", () => {
  const two = [
    { level: 36, setting: step(36) },
    { level: 40, setting: step(40) },
  ];

  it("tells between tests from beyond them, by container", () => {
    const { response } = knownOf(two);
    expect(basisOf(response, setUp(38))).toBe("interpolated");
    expect(basisOf(response, setUp(41))).toBe("extrapolated");
    expect(basisOf(response, setUp(38, "basin"))).toBe("extrapolated");
    expect(basisOf(knownOf([]).response, setUp(38))).toBe("assumed");
  });

  it("calls another program assumed: one says nothing of the other", () => {
    const control = { kind: "programs", programs: ["warm", "mild"] } as const;
    const { response } = knownOf([{ level: 40, setting: program("warm") }], cooker({ control }));
    const of = (name: string, container: string) =>
      basisOf(response, { appliance: "cooker", setting: program(name), container });
    expect(of("mild", "jars")).toBe("assumed");
    expect(of("warm", "basin")).toBe("extrapolated");
  });
});
