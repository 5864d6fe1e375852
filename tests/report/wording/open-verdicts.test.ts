import { expect, it } from "vitest";
import type { UncertaintySource } from "../../../src/culture/verdict-types.ts";
import { openVerdictText, remedyText } from "../../../src/report/wording/open-verdicts.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const [open] = analysis.advice.next.open;
const writing = plainWriting("degC");

it("says what the largest doubt is, what the verdict would be without it, and what lessens it", () => {
  expect(openVerdictText(analysis, open!, writing)).toBe(
    "81 % likely to hold; one run to the next, 0.30 °C (0.54 °F), assumed: 61 % of the doubt; without that doubt: holds (97 %). To lessen that doubt: repeat the same test on another night.",
  );
});

it("has no doubt to tell where no hold was seen", () => {
  expect(openVerdictText(analysis, { ...open!, doubt: null, without: null }, writing)).toBe(
    "81 % likely to hold; no steady hold was seen. To settle it: test again overnight.",
  );
});

it("asks who ended the heat where it ended too soon", () => {
  const ended = { ...open!, doubt: null, without: null, heatEnded: { afterHours: 9, needed: 36 } };
  expect(openVerdictText(analysis, ended, writing)).toBe(
    "81 % likely to hold; its heat ended after 9 h of 36 h: by itself, or by you. To settle it: leave it on for the culture’s whole time and test that.",
  );
});

it("knows something else to do for each source of doubt", () => {
  const sources: readonly UncertaintySource[] = [
    "thermometer",
    "resolution",
    "mean of the hold",
    "run to run",
    "hours not tested",
    "drift",
  ];
  const remedies = sources.map((source) =>
    remedyText({ ...open!, doubt: { ...open!.doubt!, source } }),
  );
  expect(new Set(remedies).size).toBe(sources.length);
});

it("does not ask for the first check of a thermometer that was checked", () => {
  const doubt = { ...open!.doubt!, source: "thermometer", from: "measured" } as const;
  expect(remedyText({ ...open!, doubt })).toMatch(/^check the thermometer again/);
});

it("says so where another doubt would still keep it open", () => {
  const without = { verdict: "unproven", probability: 0.47 } as const;
  expect(openVerdictText(analysis, { ...open!, without }, writing)).toContain(
    "without that doubt: still unproven (47 %)",
  );
});
