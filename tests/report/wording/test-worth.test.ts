/** Constructed: the advice is invented, see sample-advice.ts. */
import { describe, expect, it } from "vitest";
import type { NextTest } from "../../../src/advice/next-types.ts";
import { settledBy, worthText } from "../../../src/report/wording/test-worth.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const [box] = analysis.advice.next.tests;
const writing = plainWriting("degC");
const outcomes = [
  { culture: "reuteri", now: 0.5, holds: 0.6, misses: 0.2 },
  { culture: "warm-blend", now: 0.3, holds: 0.1, misses: 0.5 },
  { culture: "yoghurt", now: 0.99, holds: 1, misses: 0 },
];
const worth = (more: Partial<NextTest>, kitchen = analysis): string =>
  worthText({ ...box!, ...more }, kitchen, writing);

describe("worthText", () => {
  it("gives both chances of each culture, and sums up several", () => {
    expect(worth({ gain: 1.4, outcomes })).toBe(
      "Chance to prove that it holds Low long-hold milk culture: about 60 %, to rule it out: about 20 %; to prove that it holds Warm long-hold blend: about 10 %, to rule it out: about 50 %. To be expected: 1.4 of its 2 open verdicts decided.",
    );
  });

  it("notes a culture that nothing tested holds yet", () => {
    const none = { ...analysis, setUps: analysis.setUps.slice(-1) };
    expect(worth({ outcomes: outcomes.slice(0, 1) }, none)).toContain(
      "that it holds Low long-hold milk culture, which nothing tested holds yet: about 60 %",
    );
  });

  it("claims no more than some dozen simulated results can tell", () => {
    const certain = { culture: "reuteri", now: 0.5, holds: 1, misses: 0 };
    expect(worth({ outcomes: [certain] })).toContain("more than 95 %");
    expect(worth({ outcomes: [{ ...certain, holds: 13 / 15 }] })).toContain("about 85 %");
  });

  it("says so where it can hardly do more than rule out", () => {
    const hopeless = [{ culture: "reuteri", now: 0.2, holds: 0.03, misses: 0.7 }];
    expect(worth({ outcomes: hopeless })).toBe(
      "Chance to rule out Low long-hold milk culture: about 70 %.",
    );
  });
});

describe("settledBy", () => {
  it("puts first what it may well hold, and leaves out what is proven already", () => {
    const told = settledBy({ ...box!, outcomes: outcomes.toReversed() }, analysis);
    expect(told).toEqual([
      { culture: "reuteri", holds: 0.6, misses: 0.2 },
      { culture: "warm-blend", holds: 0.1, misses: 0.5 },
    ]);
  });

  it("does not tell that an untested set-up misses what nobody would put there", () => {
    const advised = analysis.advice.appliances.find(({ appliance }) => appliance === "box")!;
    const best = advised.cultures.find(({ culture }) => culture === "yoghurt")!.best!;
    const cultures = advised.cultures.map((one) =>
      one.culture === "yoghurt" ? one : { ...one, best: null },
    );
    const advice = { ...analysis.advice, appliances: [{ ...advised, cultures }] };
    const untested = { ...box!, setUp: best.setUp, basis: "extrapolated" } as const;
    const told = settledBy(
      {
        ...untested,
        outcomes: [
          { culture: "reuteri", now: 0.3, holds: 0.1, misses: 0.8 },
          { culture: "warm-blend", now: 0.4, holds: 0.3, misses: 0.6 },
          { culture: "yoghurt", now: 0.5, holds: 0.4, misses: 0.5 },
        ],
      },
      { ...analysis, advice },
    );
    expect(told).toEqual([
      { culture: "yoghurt", holds: 0.4, misses: 0.5 },
      { culture: "warm-blend", holds: 0.3, misses: null },
    ]);
  });
});
