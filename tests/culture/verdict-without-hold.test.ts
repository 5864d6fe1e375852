import { describe, expect, it } from "vitest";
import { verdictWithoutHold } from "../../src/culture/verdict-without-hold.ts";
import type { VerdictEvidence } from "../../src/culture/verdict-evidence.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { specifiedThermometer } from "../../src/thermometer/budget.ts";
import { asked } from "./nights.ts";

const evidence = (heatedMinutes: number, peak: number | null): VerdictEvidence => ({
  night: {
    phases: [{ kind: "warm-up", fromMinute: 0, toMinute: heatedMinutes }],
    warmUp: null,
    hold: null,
    holdReadings: null,
    peak,
  },
  resolution: 0.1,
  thermometer: specifiedThermometer(celsiusDifference(0.5), "stated"),
  runToRun: { value: celsiusDifference(0.3), from: "assumed" },
  room: null,
  confidence: 0.95,
});

describe("verdictWithoutHold", () => {
  it("misses where hours of heating never came near", () => {
    const found = verdictWithoutHold(asked(38, 42, 24), evidence(400, 30));
    expect(found.verdict).toBe("misses");
    expect(found.reasons).toEqual([{ code: "never-reached", low: 38, peak: 30 }]);
  });

  it.each([
    ["heated for an hour only", 60, 30],
    ["came near", 400, 37.5],
    ["no heating seen", 0, null],
  ] as const)("is unproven where it %s", (_, minutes, peak) => {
    const found = verdictWithoutHold(asked(38, 42, 24), evidence(minutes, peak));
    expect(found.verdict).toBe("unproven");
    expect(found.probability).toBeLessThanOrEqual(0.5);
    expect(found.reasons).toEqual([{ code: "no-hold" }]);
  });
});
