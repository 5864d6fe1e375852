/** Where too little is known of an appliance to promise a culture anything. */
import { joined, obstacles, steadyRoom, testAsked } from "./advice-clauses.ts";
import type { Known } from "./advice-clauses.ts";
import { elsewhereText } from "./elsewhere.ts";
import { levelText, likelyText, outlookText } from "./expected.ts";
import { probabilityText } from "./probability.ts";
import { theAppliance, theSetUp, withinTheAppliance } from "./set-up-phrases.ts";

const untested = (known: Known): string => {
  const { best, analysis, writing, chance } = known;
  const name = theAppliance(analysis.kitchen, best.setUp);
  const where = withinTheAppliance(analysis.kitchen, best.setUp, writing);
  const likely = likelyText(chance, analysis.confidence, writing);
  const level = best.level === null ? "" : `comes to ${levelText(best.level, writing)}, and `;
  return joined([
    `${name} is not tested yet: by assumption alone, ${where}, it ${level}is ${likely}`,
    testAsked,
    elsewhereText(known),
  ]);
};

/** "as tested, jars in water, the cooker does not hold this (< 1 %)"; null where nothing was tested. */
const asTested = ({ advice, analysis, writing }: Known): string | null => {
  const { from } = advice;
  if (from === null) return null;
  const where = withinTheAppliance(analysis.kitchen, from.setUp, writing);
  const word =
    from.chance.verdict === "misses" ? "does not hold this" : "is not proven to hold this";
  const chance = probabilityText(from.chance.probability, analysis.confidence, writing.space);
  return `as tested, ${where}, ${theAppliance(analysis.kitchen, from.setUp)} ${word} (${chance})`;
};

/** What is in the way of a set-up that nobody tested; that it is off its window, its level says. */
const levelSays = ["not-tested", "too-warm-at-lowest", "too-cold-at-highest"];

/** Tests there are, but none of the set-up that might do. */
const beyondTests = (known: Known, tested: string): string => {
  const { best, chance, analysis, writing } = known;
  const where = withinTheAppliance(analysis.kitchen, best.setUp, writing);
  return joined([
    tested,
    `${where}, not tested: ${outlookText(best, chance, analysis.confidence, writing)}, but too little is known of that`,
    obstacles(known, 1, levelSays),
    steadyRoom(known),
    "test that with water before trusting it",
    elsewhereText(known),
  ]);
};

const tooLittle = (known: Known): string => {
  const { best, analysis, writing } = known;
  const name = theAppliance(analysis.kitchen, best.setUp);
  const where = withinTheAppliance(analysis.kitchen, best.setUp, writing);
  return joined([
    `too little is known of ${name} for this: ${where}, ${outlookText(best, known.chance, analysis.confidence, writing)}`,
    obstacles(known, 1, ["not-tested"]),
    steadyRoom(known),
    "test it there with water before trusting it",
    elsewhereText(known),
  ]);
};

export const unknown = (known: Known): string => {
  const { best, appliance, advice } = known;
  const failed = obstacles(known, 1, ["not-tested"]);
  if (appliance.tests.length === 0 && (failed === null || advice.change === "first test")) {
    return failed === null ? untested(known) : `${failed}: ${testAgain(known)}`;
  }
  const tested = asTested(known);
  return tested === null || best.basis === "tested" ? tooLittle(known) : beyondTests(known, tested);
};

const testAgain = (known: Known): string => {
  const { analysis, best, writing } = known;
  return joined([
    `test ${theSetUp(analysis.kitchen, best.setUp, writing)}, again with water, and look at the curve`,
    elsewhereText(known),
  ]);
};
