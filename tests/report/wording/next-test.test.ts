import { describe, expect, it } from "vitest";
import type { NextTest } from "../../../src/advice/next-types.ts";
import { nextTestSentence } from "../../../src/report/wording/next-test.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const [box] = analysis.advice.next.tests;
const say = (more: Partial<NextTest> = {}): string =>
  nextTestSentence(analysis, { ...box!, ...more }, plainWriting("degC"));

describe("nextTestSentence", () => {
  it("says which set-up, how long, how often, with what, and what it could prove", () => {
    expect(say()).toBe(
      "Test the warming box at mark 3, jars on the rack, for 36 h once it is warm (day and night). Take a reading every 2 min (by hand at least every 45 min, not in step with its swing of 30 min), with Logger with jar probes (good enough: standard uncertainty 0.12 °C (0.22 °F)). Chance to prove that it holds Low long-hold milk culture: about 55 %, to rule it out: about 25 %.",
    );
  });

  it("leaves out what there is not", () => {
    const interval = { loggerMinutes: 0.5, byHandMinutes: 60, swingMinutes: null };
    const text = say({ thermometer: null, daytime: false, hours: 10, interval });
    expect(text).toContain(
      "for 10 h once it is warm (overnight will do). Take a reading every 30 s (by hand at least every hour).",
    );
    expect(text).not.toMatch(/swing|uncertainty/);
  });

  it("says of a thermometer that it is the best here and not good enough", () => {
    const thermometer = { id: "pen", standardUncertainty: 0.6, word: "too coarse" } as const;
    expect(say({ thermometer })).toContain(
      "with Pen thermometer (the best here, yet too coarse: standard uncertainty 0.6 °C (1.1 °F))",
    );
  });
});
