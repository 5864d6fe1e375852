import { describe, expect, it } from "vitest";
import type { NextTest } from "../../../src/advice/next-types.ts";
import { nextTestSentence, settledBy } from "../../../src/report/wording/next-test.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const [box] = analysis.advice.next.tests;
const say = (more: Partial<NextTest> = {}): string =>
  nextTestSentence(analysis, { ...box!, ...more }, plainWriting("degC"));

describe("nextTestSentence", () => {
  it("says which set-up, how long, how often, with what, and what it could prove", () => {
    expect(say()).toBe(
      "Test the warming box at mark 3, jars on the rack, for 36 h once it is warm (day and night), a reading every 2 min (by hand at least every 45 min, not in step with its swing of 30 min), with Logger with jar probes (good enough: standard uncertainty 0.12 °C (0.22 °F)). Chances to prove: 55 % that it holds Low long-hold milk culture; 25 % that it does not hold Low long-hold milk culture.",
    );
  });

  it("leaves out what there is not", () => {
    const interval = { loggerMinutes: 0.5, byHandMinutes: 60, swingMinutes: null };
    const text = say({ thermometer: null, daytime: false, hours: 10, interval });
    expect(text).toContain(
      "for 10 h once it is warm (overnight will do), a reading every 30 s (by hand at least every 1 h).",
    );
    expect(text).not.toMatch(/swing|uncertainty/);
  });

  it("says of a thermometer that it is the best here and not good enough", () => {
    const thermometer = { id: "pen", standardUncertainty: 0.6, word: "too coarse" } as const;
    expect(say({ thermometer })).toContain(
      "with Pen thermometer (the best here, yet too coarse: standard uncertainty 0.6 °C (1.1 °F))",
    );
  });

  it("notes a culture that nothing holds yet, and sums up several", () => {
    const none = {
      ...analysis,
      setUps: analysis.setUps.slice(-1),
    };
    const outcomes = [
      { culture: "reuteri", now: 0.5, holds: 0.6, misses: 0.2 },
      { culture: "warm-blend", now: 0.3, holds: 0.1, misses: 0.5 },
      { culture: "yoghurt", now: 0.99, holds: 1, misses: 0 },
    ];
    const text = nextTestSentence(none, { ...box!, gain: 1.4, outcomes }, plainWriting("degC"));
    expect(text).toContain(
      "60 % that it holds Low long-hold milk culture, which nothing holds yet;",
    );
    expect(text).toContain("To be expected: 1.4 of its 2 open verdicts decided.");
    // Proven already: no news.
    expect(text).not.toContain("Yoghurt");
  });
});

describe("settledBy", () => {
  it("is likeliest first, and leaves out what hardly ever comes", () => {
    const outcomes = [{ culture: "reuteri", now: 0.5, holds: 0.03, misses: 0.7 }];
    expect(settledBy({ ...box!, outcomes }, analysis)).toEqual([
      { culture: "reuteri", word: "misses", chance: 0.7 },
    ]);
  });
});
