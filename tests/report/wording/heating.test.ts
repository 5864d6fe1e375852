import { describe, expect, it } from "vitest";
import type { HeatingReason } from "../../../src/culture/heating-types.ts";
import {
  coolDownText,
  coolingText,
  equivalentText,
  heatingCautions,
  heatingNext,
  heatingReasonText,
  moment,
  spellLength,
  spellText,
} from "../../../src/report/wording/heating.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { coolDowns, openStep, sampleStep } from "../sample-heating.ts";

const words = { writing: plainWriting("degC"), startWallClock: null, confidence: 0.95 };
const [cooled, foretold] = coolDowns;

describe("spellLength", () => {
  it.each([
    [0.25, "15 s"],
    [10, "10 min"],
    [12.44, "12.4 min"],
    [80, "1 h 20 min"],
  ])("tells %s minutes as %s", (minutes, text) => {
    expect(spellLength(minutes, " ")).toBe(text);
  });
});

describe("moment", () => {
  it("is the clock's where there is one, else the minute", () => {
    expect(moment(47.4, words)).toBe("minute 47");
    const startWallClock = Date.UTC(2026, 2, 7, 18, 40);
    expect(moment(47.4, { ...words, startWallClock })).toBe("19:27");
  });
});

describe("what the heat was", () => {
  it("tells the spell, with and without the doubt", () => {
    expect(spellText(sampleStep, words)).toContain("15.4 min, minute 30 to minute 45");
    expect(spellText(sampleStep, words)).toMatch(/taken off, 14 min$/);
    expect(spellText(openStep, words)).toMatch(/taken off, none$/);
    expect(spellText({ ...sampleStep, longest: null }, words)).toContain("none at 90 °C");
  });

  it("rounds the equivalent minutes with their uncertainty, and never counts in thousands", () => {
    expect(equivalentText(sampleStep, words)).toContain("28.7 ± 1.9 min at 90 °C");
    const much = { value: 20_000, standardUncertainty: 900 };
    expect(equivalentText({ ...sampleStep, equivalentMinutes: much }, words)).toContain(
      "more than 100 times",
    );
  });
});

describe("heatingReasonText", () => {
  const reasons: readonly HeatingReason[] = [
    { code: "never-reached", peak: 86.3 },
    { code: "too-short", missingMinutes: 1.5 },
    { code: "near-target", margin: 0.1, expanded: 0.5 },
    { code: "log-starts-hot" },
    { code: "log-ends-hot" },
    { code: "gap", minutes: 7 },
    { code: "coarse", intervalMinutes: 5 },
    { code: "few-readings", readings: 3 },
  ];

  it.each(reasons)("is one sentence of its own: $code", (reason) => {
    const text = heatingReasonText(reason, words);
    expect(text).toMatch(/^[A-Z].*\.$/);
    expect(text).not.toMatch(/undefined|NaN/);
  });
});

describe("heatingNext", () => {
  it("asks nothing where it held", () => {
    expect(heatingNext(sampleStep, words)).toBeNull();
  });

  it.each([
    [{ code: "never-reached", peak: 86 }, "shows 90.5 °C"],
    [{ code: "log-ends-hot" }, "Log the whole of it"],
    [{ code: "gap", minutes: 7 }, "at least every 2 min"],
    [{ code: "too-short", missingMinutes: 1 }, "for 10 min without a break"],
  ] as const)("asks for what %s calls for", (reason, text) => {
    expect(heatingNext({ ...openStep, reasons: [reason] }, words)).toContain(text);
  });
});

describe("coolDownText", () => {
  it("tells when it was cool enough, and how long that took", () => {
    expect(coolDownText(cooled!, words)).toBe(
      "below 48 °C (118.4 °F), the culture’s ceiling: 1 h 15 min after the heating, at minute 120, the thermometer’s doubt allowed for",
    );
  });

  it("foretells with an interval, and what that rests on", () => {
    expect(coolDownText(foretold!, words)).toContain(
      "foretold for minute 129 (95 %: minute 126 to minute 133)",
    );
    const endless = { ...foretold!, predicted: { ...foretold!.predicted!, high: null } };
    expect(coolDownText(endless, words)).toContain("no latest time");
    expect(coolingText(coolDowns, words)).toContain("time constant 1 h 19 min");
    expect(coolingText([cooled!], words)).toBeNull();
  });

  it.each(["never-above", "too-few-readings", "not-cooling", "levels-off", "probe-out"] as const)(
    "says why nothing can be told: %s",
    (unknown) => {
      const text = coolDownText({ ...foretold!, predicted: null, unknown }, words);
      expect(text.length).toBeGreaterThan(60);
      expect(text).not.toContain("undefined");
    },
  );
});

describe("heatingCautions", () => {
  it("claims no safety, and names who decides", () => {
    expect(heatingCautions.join(" ")).toMatch(/not that milk is safe.*local food code/);
  });
});
