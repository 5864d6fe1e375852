import { describe, expect, it } from "vitest";
import { openVerdicts } from "../../src/advice/open-verdicts.ts";
import { assumedRunToRun } from "../../src/culture/run-to-run.ts";
import { decide } from "../../src/culture/verdict.ts";
import type { VerdictEvidence } from "../../src/culture/verdict-evidence.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, settledTest, step, type ConstructedTest } from "./constructed.ts";

// Constructed tests; the reference is the verdict decided again with one doubt at nothing.
const openIn = (of: ConstructedTest, ...requirements: readonly Requirement[]) => {
  const test = settledTest(of);
  const input = adviceInput({ requirements, tests: [test] });
  const evidence: VerdictEvidence = {
    ...test.settled.evidence,
    runToRun: { value: assumedRunToRun, from: "assumed" },
  };
  return { open: openVerdicts(input), evidence, input };
};

const none = celsiusDifference(0);
const coarse = correctedThermometer(none, celsiusDifference(0.4));
const swing = { peakToPeak: 0.5, periodMinutes: 25 };

describe("openVerdicts", () => {
  it("has nothing to say of what is decided, or of a kitchen without tests", () => {
    const held = openIn({ level: 38, hoursHeld: 14 }, asked(36, 40, 12));
    expect(held.input.setUps[0]!.verdicts[0]!.verdict).toBe("holds");
    expect(held.open).toEqual([]);
    expect(openIn({ level: 45 }, asked(36, 40, 12)).open).toEqual([]);
    expect(openVerdicts(adviceInput({ requirements: [asked(36, 40, 12)] }))).toEqual([]);
  });

  it.each([
    ["normal", coarse],
    ["rectangular", specifiedThermometer(celsiusDifference(0.8), "stated")],
  ])("names a %s thermometer, and what it would be without", (_, thermometer) => {
    const requirement = asked(37, 39, 12);
    const { open, evidence } = openIn({ level: 38, swing, thermometer }, requirement);
    expect(open).toHaveLength(1);
    expect(open[0]!.doubt).toMatchObject({ source: "thermometer", from: "stated" });
    expect(open[0]!.doubt!.standardUncertainty).toBe(thermometer.standardUncertainty);
    const calm = { ...thermometer, standardUncertainty: none, accuracy: null };
    const again = decide(requirement, { ...evidence, thermometer: calm });
    expect(open[0]!.without!.verdict).toBe(again.verdict);
    expect(open[0]!.without!.probability).toBeCloseTo(again.probability, 12);
    expect(again.probability).toBeGreaterThan(open[0]!.probability);
  });

  it("names run to run, and what it would be without", () => {
    const requirement = asked(37, 38.3, 12);
    const { open, evidence } = openIn({ level: 37.8 }, requirement);
    expect(open[0]!.doubt).toMatchObject({ source: "run to run", from: "assumed" });
    const runToRun = { value: none, from: "assumed" } as const;
    const again = decide(requirement, { ...evidence, runToRun });
    expect(open[0]!.without).toEqual({
      verdict: again.verdict,
      probability: expect.closeTo(again.probability, 12),
    });
    expect(again.verdict).toBe("holds");
  });

  it("names hours not tested, and what the tested hours alone would give", () => {
    const drifting = { level: 38, hoursHeld: 4, driftPerHour: -0.2 };
    const { open } = openIn(drifting, asked(36.5, 39.5, 40));
    expect(open[0]!.doubt).toMatchObject({ source: "hours not tested", from: "assumed" });
    const { verdict, probability } = open[0]!.without!;
    // A culture that asks for no more than was tested has no such doubt.
    const short = openIn(drifting, asked(36.5, 39.5, 4));
    const decided = short.input.setUps[0]!.verdicts[0]!;
    expect(verdict).toBe(decided.verdict);
    expect(decided.verdict).toBe("holds");
    // Other courses are drawn for other hours: 256 of them, and of the fast part twelve values.
    expect(Math.abs(probability - decided.probability)).toBeLessThan(0.02);
  });

  it("gives the largest doubt its share of the variance, and no other is larger", () => {
    const { open, input } = openIn({ level: 38.4, swing, thermometer: coarse }, asked(37, 39, 30));
    const { uncertainty, probability } = input.setUps[0]!.verdicts[0]!;
    const variances = uncertainty.map(({ standardUncertainty }) => standardUncertainty ** 2);
    const all = variances.reduce((sum, one) => sum + one, 0);
    expect(open[0]!.doubt!.share).toBeCloseTo(Math.max(...variances) / all, 12);
    expect(open[0]!.doubt!.standardUncertainty ** 2).toBe(Math.max(...variances));
    expect(open[0]!.probability).toBe(probability);
  });

  it("asks for no other doubt where the heat ended before the culture's hours were over", () => {
    const { open } = openIn({ level: 38, switchedOffAfter: 8 }, asked(37, 39, 12));
    expect(open).toHaveLength(1);
    expect(open[0]!.heatEnded!.afterHours).toBeCloseTo(8, 0);
    expect(open[0]).toMatchObject({ doubt: null, without: null, heatEnded: { needed: 12 } });
  });

  it("lists every set-up and culture that is open, in their order", () => {
    const tests = [
      settledTest({ level: 38.8, setting: step(38) }),
      settledTest({ level: 40.9, setting: step(40) }),
    ];
    const requirements = [asked(37, 39, 12), { ...asked(38.6, 41, 12), culture: "other" }];
    const open = openVerdicts(adviceInput({ requirements, tests }));
    expect(open.map(({ setUp, culture }) => [setUp.setting, culture])).toEqual([
      [step(38), "window"],
      [step(38), "other"],
      [step(40), "other"],
    ]);
  });

  it("has no doubt to take away where there is no hold to speak of", () => {
    const requirements = [asked(37, 39, 12)];
    const input = adviceInput({ requirements, tests: [settledTest({ level: 38.8 })] });
    const [setUp] = input.setUps;
    const [verdict] = setUp!.verdicts;
    const bare = {
      ...setUp!,
      mean: null,
      verdicts: [
        { ...verdict!, probability: verdict!.probability, reasons: [{ code: "no-hold" } as const] },
      ],
    };
    const open = openVerdicts({ ...input, setUps: [bare] });
    expect(open).toEqual([expect.objectContaining({ doubt: null, without: null })]);
  });
});
