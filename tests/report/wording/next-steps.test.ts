import { describe, expect, it } from "vitest";
import type { Reason, VerdictWord } from "../../../src/culture/verdict-types.ts";
import { celsiusDifference } from "../../../src/quantity.ts";
import { type KnownSetUp, nextStep } from "../../../src/report/wording/next-steps.ts";

import { plainWriting } from "../../../src/report/writing.ts";
import { requirement, verdict } from "../sample-analysis.ts";

const writing = plainWriting("degC");
const answered = (word: VerdictWord, reasons: readonly Reason[]) =>
  verdict(word, 0.5, requirement("window", 38, 43, null, 24), [...reasons]);

const step = (word: VerdictWord, ...reasons: Reason[]): string =>
  nextStep(answered(word, reasons), { writing, setUp: null });

/** The same in a kitchen, which knows the appliance. */
const stepOf = (setUp: KnownSetUp, word: VerdictWord, ...reasons: Reason[]): string =>
  nextStep(answered(word, reasons), { writing, setUp });

const known: KnownSetUp = { tests: 1 };
const tooWarm: Reason = { code: "above-window", high: 43, share: 1 };

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
    // Where a hold that ended by itself also sat beside the window, running on would not help.
    const cold: Reason = { code: "mean-outside", mean: 36, side: "below", by: 2 };
    const ended: Reason = { code: "fell-away", afterHours: 8, needed: 24 };
    expect(step("misses", cold, ended)).toMatch(/too cold/);
    expect(step("unproven", { code: "no-hold" })).toMatch(/was the probe in the water/);
    expect(step("unproven", { code: "too-little-hold", hours: 1, readings: 4 })).toMatch(
      /overnight, with six readings or more/,
    );
    expect(step("unproven", { code: "fell-away", afterHours: 8, needed: 24 })).toMatch(
      /If you ended this test yourself/,
    );
    expect(step("unproven")).toMatch(/Repeat the test/);
  });

  it("leaves settings, containers and other appliances to a kitchen's advice, which knows them", () => {
    expect(stepOf(known, "misses", tooWarm)).toBe("It runs too warm for this.");
    expect(stepOf(known, "misses")).toBe("Do not rely on it for this culture as it is.");
    const edge: Reason = {
      code: "near-edge",
      edge: 43,
      side: "above",
      margin: 0.1,
      uncertainty: 0.4,
    };
    expect(stepOf(known, "unproven", edge)).not.toMatch(/another setting/);
  });

  it("does not ask for what was done already", () => {
    const spread: Reason = {
      code: "would-settle",
      source: "run to run",
      verdict: "holds",
      probability: 0.97,
    };
    expect(stepOf(known, "unproven", spread)).toMatch(/two nights/);
    expect(stepOf({ tests: 2 }, "unproven", spread)).toMatch(/once more: each further/);
    const checked = {
      ...answered("unproven", [{ ...spread, source: "thermometer" }]),
      uncertainty: [
        { source: "thermometer", standardUncertainty: celsiusDifference(0.4), from: "measured" },
      ],
    } as const;
    expect(nextStep(checked, { writing, setUp: null })).toMatch(/Check the thermometer again/);
  });

  it("offers another way where no single doubt decides", () => {
    const edge: Reason = {
      code: "near-edge",
      edge: 43,
      side: "above",
      margin: 0.1,
      uncertainty: 0.4,
    };
    expect(step("unproven", edge)).toMatch(/nearer the middle of the window/);
    expect(step("unproven", { ...edge, margin: 0.5 })).not.toMatch(/nearer the middle/);
    const settled: Reason = {
      code: "would-settle",
      source: "drift",
      verdict: "holds",
      probability: 0.97,
    };
    expect(step("unproven", edge, settled)).not.toMatch(/nearer the middle/);
  });

  it("promises nothing and names no number of degrees", () => {
    for (const word of ["holds", "misses", "unproven"] as const) {
      expect(step(word)).not.toMatch(/\d|safe|guarantee|healthy/i);
    }
  });
});
