import { describe, expect, it } from "vitest";
import type { CultureAdvice } from "../../../src/advice/advice-types.ts";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import { adviceSentence } from "../../../src/report/wording/advice.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";

const whole = sampleKitchen();

/** Of one appliance and culture by their places, with parts of the advice replaced. */
const say = (
  appliance: number,
  culture: number,
  more: Partial<CultureAdvice> = {},
  analysis: KitchenAnalysis = whole,
): string => {
  const one = analysis.advice.appliances[appliance]!;
  const advice = { ...one.cultures[culture]!, ...more };
  return adviceSentence(analysis, one, advice, plainWriting("degC"));
};

describe("what is said where too little is known", () => {
  it("calls an assumption one", () => {
    expect(say(4, 0)).toMatch(
      /^The cupboard over the stove is not tested yet: by assumption alone, .* likely to hold; test it with water first; the adjustable cooker can \(96 %\)\.$/,
    );
    expect(say(1, 2, {}, untestedKitchen())).toMatch(/all of that is assumed, so test it once/);
  });

  it("asks for another test where those there are say nothing", () => {
    const failed = { code: "only-failed-tests", tests: 2 } as const;
    expect(say(4, 0, { obstacles: [failed] })).toMatch(
      /^None of its 2 tests settled or could be read: test the cupboard over the stove, .*, again with water, and look at the curve/,
    );
    const beyond = { ...whole.advice.appliances[1]!.cultures[0]!, answer: "unknown" } as const;
    const from = { setUp: whole.setUps[2]!.setUp, chance: whole.setUps[2]!.verdicts[0]! };
    const best = { ...beyond.best!, basis: "interpolated" } as const;
    expect(say(1, 0, { answer: "unknown", best, from, change: "setting" })).toMatch(
      /^As tested, at 41 °C \(105\.8 °F\), straight in the basin, the adjustable cooker does not hold this \(< 1 %\); at 38 °C \(100\.4 °F\), jars in water, not tested: expected .*, .* likely to hold, but too little is known of that; test that with water before trusting it\.$/,
    );
    const disagree = {
      code: "tests-disagree",
      setUp: whole.setUps[1]!.setUp,
      spread: 2,
    } as const;
    expect(say(1, 0, { answer: "unknown", obstacles: [disagree] })).toMatch(
      /^Too little is known of the adjustable cooker for this: .* lie 2\.0 °C \(3\.6 °F\) apart.*; test it there with water before trusting it/,
    );
  });
});
