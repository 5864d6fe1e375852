import { describe, expect, it } from "vitest";
import type { Reason, VerdictWord } from "../../../src/culture/verdict-types.ts";
import { nextStep } from "../../../src/report/wording/next-steps.ts";
import { requirement, verdict } from "../sample-analysis.ts";

const step = (word: VerdictWord, ...reasons: Reason[]): string =>
  nextStep(verdict(word, 0.5, requirement("window", 38, 43, null, 24), reasons));

describe("nextStep", () => {
  it("keeps what works as it is", () => {
    expect(step("holds")).toMatch(/just as it was tested/);
  });

  it("points away from the side that was missed", () => {
    expect(step("misses", { code: "above-window", high: 43, share: 1 })).toMatch(/lower setting/);
    expect(step("misses", { code: "never-reached", low: 38, peak: 33 })).toMatch(/higher setting/);
    expect(step("misses", { code: "drifts-out", perHour: -0.3, side: "below" })).toMatch(
      /higher setting/,
    );
    expect(step("misses", { code: "fell-away", afterHours: 8, needed: 24 })).toMatch(
      /switches itself off/,
    );
    expect(step("misses")).toMatch(/Do not rely on it/);
  });

  it("goes for the doubt that would settle it", () => {
    const settle = (source: Extract<Reason, { code: "would-settle" }>["source"]): string =>
      step("unproven", { code: "would-settle", source, verdict: "holds", probability: 0.97 });
    expect(settle("thermometer")).toMatch(/melting ice/);
    expect(settle("hours not tested")).toMatch(/day and night/);
    expect(settle("run to run")).toMatch(/another night/);
    expect(step("unproven", { code: "no-hold" })).toMatch(/was the probe in the water/);
    expect(step("unproven", { code: "too-little-hold", hours: 1, readings: 4 })).toMatch(
      /overnight/,
    );
    expect(step("unproven", { code: "fell-away", afterHours: 8, needed: 24 })).toMatch(
      /If you ended this test yourself/,
    );
    expect(step("unproven")).toMatch(/Repeat the test/);
  });

  it("promises nothing and names no number of degrees", () => {
    for (const word of ["holds", "misses", "unproven"] as const) {
      expect(step(word)).not.toMatch(/\d|safe|guarantee|healthy/i);
    }
  });
});
