/** Constructed: the advice is invented, see sample-advice.ts. */
import { expect, it } from "vitest";
import type { CultureAdvice } from "../../src/advice/advice-types.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import { adviceLines, nextLines } from "../../src/report/kitchen-advice-lines.ts";
import { flat, screenOf } from "./advice-screen.ts";
import { sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const told = (analysis: KitchenAnalysis): string => flat(adviceLines(screenOf(analysis)));
const pieces = (analysis: KitchenAnalysis) => told(analysis).match(/ Advice /g)?.length ?? 0;

/** The sample's advice, changed piece by piece. */
const changed = (change: (advice: CultureAdvice) => CultureAdvice): KitchenAnalysis => {
  const whole = sampleKitchen();
  const appliances = whole.advice.appliances.map((one) => ({
    ...one,
    cultures: one.cultures.map(change),
  }));
  return { ...whole, advice: { ...whole.advice, appliances } };
};

it("tells what to change, how likely that holds, and to test it first", () => {
  expect(told(sampleKitchen())).toMatch(
    /Advice reuteri: Set the circulating bath to 38\.\d °C .+ likely to hold \(that setting was not tested\)\. .+Test once with water what is not tested, before you trust a batch to it\./,
  );
});

it("tells which appliance can where one cannot", () => {
  expect(told(sampleKitchen())).toMatch(
    /Advice reuteri: The cooker with one warm program cannot hold this: .+; the adjustable cooker can \(96 %\)\./,
  );
});

it("says nothing where everything stays as it was tested", () => {
  expect(told(changed((one) => ({ ...one, answer: "can", change: "none" })))).toBe("");
});

it("says nothing of what is not known, nor of a cannot with nowhere else to go", () => {
  expect(told(changed((one) => ({ ...one, answer: "unknown" })))).toBe("");
  expect(told(changed((one) => ({ ...one, answer: "cannot", elsewhere: null })))).toBe("");
  expect(told(untestedKitchen())).toBe("");
});

it("says once of each set-up that its tests disagree, before any advice", () => {
  const setUp = sampleKitchen().setUps[0]!.setUp;
  const disagree = { code: "tests-disagree", setUp, spread: 4.4 } as const;
  const text = told(
    changed((one) => ({
      ...one,
      answer: "unknown",
      obstacles: one.best?.setUp.appliance === setUp.appliance ? [disagree] : [],
    })),
  );
  expect(text).toMatch(
    /^ Note Cooker with one warm program: its tests .+ lie 4\.4 °C \(7\.9 °F\) apart, .+ Find out what was different, and test it again\.$/,
  );
  expect(text.match(/apart/g)).toHaveLength(1);
});

it("keeps to four, those on cultures nothing holds yet first, and says where the rest is", () => {
  const all = changed((one) => ({ ...one, answer: "may", change: "setting" }));
  expect(pieces(all)).toBe(4);
  expect(told(all)).toContain("More of it in the report, and from holdband match.");
  const setUps = all.setUps.map((one) => ({
    ...one,
    verdicts: one.verdicts.filter(({ requirement }) => requirement.culture !== "yoghurt"),
  }));
  expect(told({ ...all, setUps }).match(/Advice yoghurt/g)).toHaveLength(4);
  const few = changed((one) => ({
    ...one,
    answer: "may",
    change: one.culture === "reuteri" && one.best?.setUp.appliance === "bath" ? "setting" : "none",
  }));
  expect(pieces(few)).toBe(1);
  expect(told(few)).not.toContain("More of it");
});

it("names the next test, or none", () => {
  const whole = sampleKitchen();
  expect(flat(nextLines(screenOf(whole)))).toMatch(/^ Next Test the warming box at mark 3/);
  const none = { ...whole.advice, next: { ...whole.advice.next, tests: [] } };
  expect(nextLines(screenOf({ ...whole, advice: none }))).toEqual([]);
});
