import { describe, expect, it } from "vitest";
import type { CultureAdvice, Obstacle } from "../../../src/advice/advice-types.ts";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import { adviceSentence } from "../../../src/report/wording/advice.ts";
import { plainWriting, terminalWriting } from "../../../src/report/writing.ts";
import {
  hostileKitchen,
  manyCultures,
  oneAppliance,
  sampleKitchen,
  untestedKitchen,
} from "../sample-kitchen.ts";

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

describe("adviceSentence", () => {
  it("leaves what holds as it was tested, and says when that rests on one test", () => {
    expect(say(1, 0)).toBe(
      "Use the adjustable cooker as it was tested, at 38 °C (100.4 °F), jars in water: it holds (96 %).",
    );
    expect(say(0, 2)).toBe(
      "Leave the cooker with one warm program as it was tested, jars in water: it holds (99 %); that rests on one test.",
    );
  });

  it("says what to set, what to expect of it, and to test it first", () => {
    expect(say(3, 2)).toMatch(
      /^Turn the warming box to mark 4, jars on the rack as tested: expected 40\.4 °C \(104\.7 °F\), between .* and .*, > 99 % likely to hold; that setting was not tested, and all of this rests on one test, so test it once with water before trusting a batch to it\.$/,
    );
  });

  it("tells what would make it likelier, and which other appliance is", () => {
    expect(say(0, 1)).toBe(
      "The cooker with one warm program as it was tested, jars in water: 81 % likely to hold, not proven; with the room kept within 20 to 22 °C (68.0 to 71.6 °F) it would be 89 %; that rests on one test: to be surer, repeat the same test on another night; the circulating bath can (97 %).",
    );
  });

  it("says plainly what an appliance cannot, why, and which can", () => {
    expect(say(0, 0)).toBe(
      "The cooker with one warm program cannot hold this: it is 0.2 °C (0.4 °F) too warm (jars on the rack) and has no other setting; the adjustable cooker can (96 %).",
    );
    const swings: Obstacle = { code: "swings-too-wide", peakToPeak: 4, windowWidth: 3 };
    const drifts: Obstacle = { code: "drifts", perHour: 0.3 };
    const obstacles = [swings, drifts, swings];
    expect(say(0, 0, { obstacles, elsewhere: null })).toBe(
      "The cooker with one warm program cannot hold this: it swings by 4.0 °C (7.2 °F), and the window is 3.0 °C (5.4 °F) wide, and it drifts up by 0.30 °C (0.54 °F) an hour; no other appliance here is likely to.",
    );
    expect(say(0, 0, { obstacles: [] })).toMatch(/it comes nearest and is \d+ % likely to hold/);
  });

  it("does not speak of other appliances that nobody looked at", () => {
    const box = oneAppliance("box");
    const sentence = say(0, 0, { answer: "cannot", elsewhere: null }, box);
    expect(sentence).not.toMatch(/other appliance/);
  });

  it("has a sentence where an appliance offers nothing", () => {
    expect(say(4, 0, { best: null, chance: null, elsewhere: null })).toBe(
      "Nothing can be said of the cupboard over the stove for this: it has not been tested; test it with water first.",
    );
  });
});

const kitchens = { whole, box: oneAppliance("box"), untestedKitchen, hostileKitchen, manyCultures };

describe.each(Object.entries(kitchens))("every sentence of %s", (_, kitchen) => {
  const analysis = typeof kitchen === "function" ? kitchen() : kitchen;
  const sentences = analysis.advice.appliances.flatMap((one) =>
    one.cultures.map((advice) =>
      adviceSentence(analysis, one, advice, terminalWriting("degF", true)),
    ),
  );

  it("is one, ends as one, and has no gap in it", () => {
    expect(sentences.length).toBeGreaterThan(2);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/[^.\s]\.$/);
      expect(sentence).not.toMatch(/undefined|NaN|null| {2}|;;|: ;|\. [A-Z]/);
    }
  });

  it("promises no more than the figures do", () => {
    expect(sentences.join(" ")).not.toMatch(/\b(?:100|0) %|safe|guarantee|healthy|always/);
  });
});
