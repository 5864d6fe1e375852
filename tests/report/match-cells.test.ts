/** Constructed: the advice is invented, see sample-advice.ts. */
import { expect, it } from "vitest";
import {
  adviceOn,
  answerWord,
  cellTexts,
  chanceText,
  colouredAnswer,
  testedText,
} from "../../src/report/match-cells.ts";
import { colourCodes, screenOf } from "./advice-screen.ts";
import { sampleKitchen } from "./sample-kitchen.ts";

const analysis = sampleKitchen();
const [low] = analysis.requirements;
const on = (appliance: string) =>
  adviceOn(
    analysis.advice.appliances.find((one) => one.appliance === appliance)!,
    low!,
  )!;
const plain = (texts: readonly string[]) => texts.map((text) => text.replaceAll("\u00a0", " "));

it("says answer, setting, container, and in words whether it was tested", () => {
  expect(plain(cellTexts(on("step-cooker"), screenOf(analysis)))).toEqual([
    "CAN 96 %",
    "38 °C (100.4 °F)",
    "Jars in water",
    "tested",
  ]);
  expect(plain(cellTexts(on("box"), screenOf(analysis)))).toEqual([
    expect.stringMatching(/^MAY \d\d %$/),
    "Mark 3",
    "Jars in water",
    "not tested",
  ]);
});

it("leaves the setting out where nothing can be set", () => {
  expect(cellTexts(on("warm-cooker"), screenOf(analysis))).toHaveLength(3);
});

it("says so where an appliance offers nothing", () => {
  const none = { ...on("box"), answer: "unknown", best: null, chance: null } as const;
  expect(cellTexts(none, screenOf(analysis))).toEqual(["UNKNOWN", "nothing to choose"]);
  expect(chanceText(none, screenOf(analysis))).toBe("");
  expect(testedText(none)).toBe("nothing to choose");
});

it.each(["can", "may", "cannot", "unknown"] as const)("marks %s by a word first", (answer) => {
  const advice = { ...on("box"), answer };
  expect(answerWord(advice)).toBe(answer.toUpperCase());
  const coloured = colouredAnswer(advice, screenOf(analysis, { colour: true }));
  expect(coloured).not.toBe(answerWord(advice));
  expect(coloured.replaceAll(colourCodes, "")).toBe(answerWord(advice));
});

it("finds no advice on a culture that was not asked about", () => {
  const other = { ...low!, culture: "another" };
  expect(adviceOn(analysis.advice.appliances[0]!, other)).toBeNull();
});
