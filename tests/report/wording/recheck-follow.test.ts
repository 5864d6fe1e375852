import { describe, expect, it } from "vitest";
import type { RecheckAdvice } from "../../../src/advice/recheck-types.ts";
import { adviceSentence } from "../../../src/report/wording/advice.ts";
import { whatFollows } from "../../../src/report/wording/recheck-follow.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { findings, moved, notMoved, sampleRecheck, setUps } from "../sample-recheck.ts";

const analysis = sampleKitchen();
const writing = plainWriting("degC");
const follows = (recheck: Partial<RecheckAdvice>) =>
  whatFollows({
    analysis,
    recheck: sampleRecheck({ rechecks: [], findings: [], ...recheck }),
    writing,
  });
const sentenceFor = (appliance: string, culture: string): string => {
  const own = analysis.advice.appliances.find((one) => one.appliance === appliance)!;
  const advice = own.cultures.find((one) => one.culture === culture)!;
  return adviceSentence(analysis, own, advice, writing);
};

/** Cold now, so that what was advised for yoghurt at 38 degC is something else. */
const fell = {
  ...notMoved,
  word: "moved",
  cultures: [
    { ...notMoved.cultures[2]!, margin: 0.4, now: { verdict: "misses", probability: 0.01 } },
  ],
} as const;

describe("what follows", () => {
  it("is the appliance's advice for a culture that fell out of its window", () => {
    const [follow, ...others] = follows({ rechecks: [fell] });
    expect(others).toEqual([]);
    expect(follow).toMatchObject({ culture: "yoghurt", text: "outside its window now." });
    expect(follow!.advice).toBe(sentenceFor("step-cooker", "yoghurt"));
  });

  it("does not praise the set-up that has just moved out, because older tests held", () => {
    // Constructed: by its tests together the warm program is still best for the warm blend.
    const own = analysis.advice.appliances.find(({ appliance }) => appliance === "warm-cooker")!;
    const advice = own.cultures.find(({ culture }) => culture === "warm-blend")!;
    expect(advice.best?.setUp).toEqual(setUps.cooker);
    expect(advice.answer).not.toBe("cannot");
    const [follow] = follows({ rechecks: [moved] });
    expect(follow).toMatchObject({ culture: "warm-blend" });
    expect(follow!.advice).toMatch(/^Older tests still weigh.+Repeat the newest/);
  });

  it("leaves out cultures a set-up never held, unless batches of them were made in it", () => {
    const cultures = [{ ...moved.cultures[0]!, margin: -1.9 }];
    expect(follows({ rechecks: [{ ...moved, cultures }] })).toEqual([]);
    const finding = { ...findings.outside, culture: "reuteri" };
    const [follow] = follows({ rechecks: [{ ...moved, cultures }], findings: [finding] });
    expect(follow).toMatchObject({ culture: "reuteri", finding });
    expect(follow!.text).toContain("2 of 3 batches separated");
  });

  it("is no advice on temperature where the newest test holds, but the log", () => {
    expect(follows({ findings: [findings.elsewhere] })).toEqual([
      {
        setUp: setUps.steps,
        culture: "reuteri",
        text: expect.stringContaining("temperature is not it") as string,
        advice: null,
        finding: findings.elsewhere,
      },
    ]);
  });

  it("is advice and log together where the temperature stays open", () => {
    const [follow] = follows({ findings: [findings.open] });
    expect(follow!.advice).toBe(sentenceFor("box", "reuteri"));
  });

  it("asks for a water test, and nothing else, where there was none", () => {
    const [follow] = follows({ findings: [findings.untested] });
    expect(follow).toMatchObject({ advice: null });
    expect(follow!.text).toContain("test it with water");
  });

  it("is nothing for batches that did not separate", () => {
    expect(follows({ findings: [{ ...findings.elsewhere, separated: 0 }] })).toEqual([]);
  });

  it("tells each culture of a set-up once", () => {
    const all = follows({ rechecks: [moved], findings: [findings.outside] });
    expect(all.map(({ culture }) => culture)).toEqual(["warm-blend"]);
  });
});
