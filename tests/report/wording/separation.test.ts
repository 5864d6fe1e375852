import { describe, expect, it } from "vitest";
import type { BatchFinding } from "../../../src/advice/recheck-types.ts";
import {
  associationTexts,
  causesTitle,
  findingText,
  loggedCauses,
  separatedText,
  silenceText,
} from "../../../src/report/wording/separation.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { findings } from "../sample-recheck.ts";

const view = { analysis: sampleKitchen(), writing: plainWriting("degC") };
const { elsewhere, outside, open, untested } = findings;
const bare: BatchFinding = { ...elsewhere, causes: [] };

describe("a culture's batches in one set-up", () => {
  it("are told with whether the temperature is to blame", () => {
    expect(findingText(elsewhere, view)).toBe(
      "2 of 3 batches separated; temperature is not it, for the newest water test lies inside the window (97 % likely to hold).",
    );
    expect(findingText(outside, view)).toContain("temperature may well be it");
    expect(findingText(open, view)).toContain("stays open");
    expect(findingText(untested, view)).toMatch(/nothing is known.+test it with water/);
  });

  it("are counted, a single one too", () => {
    const one = { ...elsewhere, batches: 1 };
    expect(separatedText({ ...one, separated: 1 })).toBe("the only batch separated");
    expect(separatedText({ ...one, separated: 0 })).toBe("the only batch did not separate");
  });
});

describe("the causes", () => {
  it("stand under a title that says whether the temperature is among them", () => {
    expect(causesTitle(elsewhere)).toBe("What else it may be, likeliest first by the log:");
    expect(causesTitle({ ...open, causes: elsewhere.causes })).toMatch(/beside the temperature/);
    expect(causesTitle(open)).toBe("The log points to no other cause.");
  });

  it("are not listed where the temperature misses, or nothing separated", () => {
    for (const finding of [outside, { ...elsewhere, separated: 0 }]) {
      expect(causesTitle(finding)).toBeNull();
      expect(silenceText(finding, view.writing)).toBeNull();
    }
  });

  it("are parted from what the log is silent about", () => {
    expect(loggedCauses(elsewhere).map(({ code }) => code)).toEqual(["held-too-long", "thin-milk"]);
    expect(silenceText(elsewhere, view.writing)).toContain("does not say the amount of starter");
    const complete = { ...elsewhere, causes: loggedCauses(elsewhere) };
    expect(silenceText(complete, view.writing)).toBeNull();
  });

  it("point outside the log where it holds nothing and lacks nothing", () => {
    expect(silenceText(bare, view.writing)).toMatch(/another starter, other milk/);
  });
});

const say = (all: readonly BatchFinding[]) =>
  associationTexts({ findings: all }, (culture) => culture.toUpperCase(), view.writing);

describe("the whole log", () => {
  it("says once for each culture whether separation goes with the temperature", () => {
    const texts = say([outside, { ...outside, setUp: elsewhere.setUp }]);
    expect(texts).toEqual([
      "WARM-BLEND: over the log, 0 of 6 batches from set-ups whose holding band lay inside the window separated, 5 of 6 from others; chance alone would part them so unevenly with a probability of 2 % (Fisher’s exact test), so in this log separation goes with the temperature, which does not yet make it the cause.",
    ]);
  });

  it("finds no association that chance would give often", () => {
    const association = { ...outside.association, probability: 0.4 };
    expect(say([{ ...outside, association }])[0]).toMatch(/does not show that separation goes/);
  });

  it("says in one sentence which logs are too short, and nothing where nothing separated", () => {
    expect(say([elsewhere, open, untested])).toEqual([
      "The log of REUTERI, YOGHURT is still too short to say whether separation goes with the temperature.",
    ]);
    expect(say([{ ...elsewhere, separated: 0 }])).toEqual([]);
    expect(say([])).toEqual([]);
  });
});
