import { describe, expect, it } from "vitest";
import type { Reason } from "../../../src/culture/verdict-types.ts";
import { reasonText, reasonTexts } from "../../../src/report/wording/reasons.ts";
import type { ReasonContext } from "../../../src/report/wording/reasons.ts";
import { plainWriting } from "../../../src/report/writing.ts";

const context: ReasonContext = {
  writing: plainWriting("degC"),
  role: "food",
  thermometerAccuracy: 1,
  confidence: 0.95,
  setUp: null,
};

/** One of each code: the compiler refuses this table when a code is missing. */
const reasons: { readonly [Code in Reason["code"]]: Extract<Reason, { code: Code }> } = {
  "all-inside": { code: "all-inside", marginLow: 2.3, marginHigh: 1.7 },
  "above-window": { code: "above-window", high: 39.5, share: 0.41 },
  "below-window": { code: "below-window", low: 36, share: 0.004 },
  "mean-outside": { code: "mean-outside", mean: 46.2, side: "above", by: 3.2 },
  "swing-too-wide": { code: "swing-too-wide", peakToPeak: 3.1, windowWidth: 2 },
  "drifts-out": { code: "drifts-out", perHour: -0.21, side: "below" },
  "passes-ceiling": { code: "passes-ceiling", ceiling: 45, peak: 46.1, probability: 0.999 },
  "near-ceiling": { code: "near-ceiling", ceiling: 45, peak: 44.6, probability: 0.12 },
  "near-edge": { code: "near-edge", edge: 43, side: "above", margin: 0.2, uncertainty: 0.6 },
  "dominant-doubt": {
    code: "dominant-doubt",
    source: "thermometer",
    standardUncertainty: 0.58,
    share: 0.68,
    from: "stated",
  },
  "tested-too-short": { code: "tested-too-short", tested: 7.6, needed: 36 },
  "too-little-hold": { code: "too-little-hold", hours: 2.1, readings: 5 },
  "fell-away": { code: "fell-away", afterHours: 8, needed: 24 },
  "overshoot-before-hold": { code: "overshoot-before-hold", ceiling: 45, peak: 47.2 },
  "never-reached": { code: "never-reached", low: 38, peak: 33.3 },
  "no-hold": { code: "no-hold" },
  "would-settle": {
    code: "would-settle",
    source: "thermometer",
    verdict: "holds",
    probability: 0.973,
  },
};

const expected: { readonly [Code in Reason["code"]]: string } = {
  "all-inside":
    "The food’s holding band lies inside the window, 2.3 °C (4.1 °F) clear of its lower edge and 1.7 °C (3.1 °F) clear of its upper.",
  "above-window": "The food sat above 39.5 °C (103.1 °F) for 41 % of the hold.",
  "below-window": "The food sat below 36 °C (96.8 °F) for less than 1 % of the hold.",
  "mean-outside":
    "The average of the hold was 46.2 °C (115.2 °F): 3.2 °C (5.8 °F) above the window’s upper edge.",
  "swing-too-wide":
    "The heating goes on and off and swings the temperature by 3.1 °C (5.6 °F); the window is 2.0 °C (3.6 °F) wide.",
  "drifts-out":
    "It drifts down by 0.21 °C (0.38 °F) an hour. If that goes on, it leaves the window at the lower edge.",
  "passes-ceiling":
    "This culture must never pass 45 °C (113 °F); the hold went up to 46.1 °C (115.0 °F). Chance that the limit is passed: > 99 %.",
  "near-ceiling":
    "This culture must never pass 45 °C (113 °F); the hold’s highest reading was 44.6 °C (112.3 °F). Chance that the limit is passed: 12 %.",
  "near-edge":
    "The holding band comes within 0.2 °C (0.4 °F) of the window’s upper edge, 43 °C (109.4 °F); the doubt is 0.6 °C (1.1 °F).",
  "dominant-doubt": "The thermometer’s ±1 °C (±1.8 °F) is most of the doubt (68 %; as you said).",
  "tested-too-short": "The test shows 7 h 36 min of hold, and the culture needs 36 h.",
  "too-little-hold":
    "There are only 5 readings over 2 h 6 min of hold: too little to promise anything.",
  "fell-away": "The heat ended after 8 h of hold, and the culture needs 24 h.",
  "overshoot-before-hold":
    "Before it settled it went up to 47.2 °C (117.0 °F), above 45 °C (113 °F), which this culture must never pass.",
  "never-reached":
    "It never got as warm as 38 °C (100.4 °F); its highest reading was 33.3 °C (91.9 °F).",
  "no-hold": "These readings show no stretch where the temperature held steady.",
  "would-settle":
    "Take that doubt away (thermometer) and the answer would be “holds”, 97 % likely to hold.",
};

describe("reasonText", () => {
  it.each(Object.values(reasons))("has plain words for $code", (reason) => {
    expect(reasonText(reason, context)).toBe(expected[reason.code]);
  });

  it("names the probe's place and the person's unit", () => {
    const bath = { ...context, role: "bath", writing: plainWriting("degF") } as const;
    expect(reasonText(reasons["above-window"], bath)).toBe(
      "The bath sat above 103.1 °F (39.5 °C) for 41 % of the hold.",
    );
  });

  it("names the size of a doubt that has no specification", () => {
    expect(reasonText(reasons["dominant-doubt"], { ...context, thermometerAccuracy: null })).toBe(
      "The thermometer, 0.6 °C (1.0 °F), is most of the doubt (68 %; as you said).",
    );
    const smaller = { ...reasons["dominant-doubt"], source: "run to run", share: 0.4 } as const;
    expect(reasonText(smaller, context)).toContain("is the largest part of the doubt (40 %");
  });

  it("says when the hold reaches beyond an edge", () => {
    expect(reasonText({ ...reasons["near-edge"], margin: -0.2 }, context)).toContain(
      "reaches 0.2 °C (0.4 °F) beyond the window’s upper edge",
    );
  });
});

describe("reasonTexts", () => {
  it("tells the margin at an edge once", () => {
    const both = [reasons["all-inside"], reasons["near-edge"]];
    expect(reasonTexts(both, context)).toEqual([
      "The food’s holding band lies inside the window.",
      expected["near-edge"],
    ]);
    expect(reasonTexts([reasons["all-inside"]], context)).toEqual([expected["all-inside"]]);
  });
});
