/** A water test worth doing: how, for how long, with what, and what it could settle. */
import type { NextTest } from "../../advice/next-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { fixed, percentInWords } from "../number-format.ts";
import { uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { shortCultureName } from "./cultures.ts";
import { theEverydayName } from "./everyday-names.ts";
import { theSetUp } from "./set-up-phrases.ts";

const fitness: Readonly<Record<NonNullable<NextTest["thermometer"]>["word"], string>> = {
  good: "good enough",
  usable: "just good enough",
  "too coarse": "the best here, yet too coarse",
};

const thermometerText = (
  { thermometer }: NextTest,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): string => {
  if (thermometer === null) return "";
  const { id, standardUncertainty, word } = thermometer;
  const name = kitchen.thermometers.find((one) => one.id === id)?.name ?? id;
  return `, with ${theEverydayName(name)} (${fitness[word]}: standard uncertainty ${uncertainty(writing, standardUncertainty)})`;
};

/** "30 s", "2 min". */
const stepText = (minutes: number, space: string): string =>
  minutes < 1 ? `${fixed(minutes * 60, 0)}${space}s` : duration(minutes, space);

/** "a reading every 2 min (by hand at least every 45 min, not in step with its swing of 30 min)". */
const intervalText = ({ interval }: NextTest, { space }: Writing): string => {
  const { loggerMinutes, byHandMinutes, swingMinutes } = interval;
  const step =
    swingMinutes === null ? "" : `, not in step with its swing of ${duration(swingMinutes, space)}`;
  return `a reading every ${stepText(loggerMinutes, space)} (by hand at least every ${duration(byHandMinutes, space)}${step})`;
};

/** How to do it, as a sentence. */
export const nextTestTask = (
  test: NextTest,
  analysis: KitchenAnalysis,
  writing: Writing,
): string => {
  const hours = duration(test.hours * 60, writing.space);
  const day = test.daytime ? "day and night" : "overnight will do";
  return `Test ${theSetUp(analysis.kitchen, test.setUp, writing)}, for ${hours} once it is warm (${day}), ${intervalText(test, writing)}${thermometerText(test, analysis, writing)}.`;
};

/** Chances smaller than this are not worth a clause. */
const leastTold = 0.05;

interface Settled {
  readonly culture: string;
  readonly word: "holds" | "misses";
  readonly chance: number;
}

/** However likely a set-up is that nobody tested: nothing of it is proven. That it misses is then no news. */
const isUnsettled = (basis: NextTest["basis"], now: number, confidence: number): boolean =>
  now > 1 - confidence && (basis !== "tested" || now < confidence);

/** What the test could prove that is not proven now, likeliest first. */
export const settledBy = (
  { basis, outcomes }: NextTest,
  { confidence }: Pick<KitchenAnalysis, "confidence">,
): readonly Settled[] =>
  outcomes
    .flatMap(({ culture, now, holds, misses }): Settled[] => {
      if (!isUnsettled(basis, now, confidence)) return [];
      return [
        { culture, word: "holds", chance: holds },
        { culture, word: "misses", chance: misses },
      ];
    })
    .filter(({ chance }) => chance >= leastTold)
    .toSorted((a, b) => b.chance - a.chance);

const openCount = (
  { basis, outcomes }: NextTest,
  { confidence }: Pick<KitchenAnalysis, "confidence">,
): number => outcomes.filter(({ now }) => isUnsettled(basis, now, confidence)).length;

const mostTold = 3;
/** A simulation of some outcomes can find them all alike; the test itself may not. */
const mostCertain = 0.995;

const isHeld = ({ setUps }: KitchenAnalysis, culture: string): boolean =>
  setUps.some(({ verdicts }) =>
    verdicts.some(
      ({ verdict, requirement }) => verdict === "holds" && requirement.culture === culture,
    ),
  );

/** "55 % that it holds Low long-hold milk culture, which nothing holds yet". */
const settledText = (
  { culture, word, chance }: Settled,
  analysis: KitchenAnalysis,
  { space }: Writing,
): string => {
  const asked = analysis.requirements.find((one) => one.culture === culture);
  const name = asked === undefined ? culture : shortCultureName(asked);
  const first = word === "holds" && !isHeld(analysis, culture) ? ", which nothing holds yet" : "";
  return `${percentInWords(Math.min(chance, mostCertain), space)} that it ${word === "holds" ? "holds" : "does not hold"} ${name}${first}`;
};

/** A single one is told by its chances already; of an untested set-up no verdict is open yet. */
const expectedText = (test: NextTest, analysis: KitchenAnalysis, told: number): string | null => {
  const open = openCount(test, analysis);
  if (open === 0 || (told > 0 && (open < 2 || test.basis !== "tested"))) return null;
  return `To be expected: ${fixed(test.gain, 1)} of its ${open} open ${open === 1 ? "verdict" : "verdicts"} decided.`;
};

/** "Chances to prove: 55 % that it holds ...; 20 % that ... To be expected: 1.4 of its 2 open verdicts decided." */
export const worthText = (test: NextTest, analysis: KitchenAnalysis, writing: Writing): string => {
  const told = settledBy(test, analysis).slice(0, mostTold);
  const chances = told.map((one) => settledText(one, analysis, writing)).join("; ");
  const expected = expectedText(test, analysis, told.length);
  return [told.length === 0 ? null : `Chances to prove: ${chances}.`, expected]
    .filter((text) => text !== null)
    .join(" ");
};

/** Two or three sentences: what to do, then what it could settle. */
export const nextTestSentence = (
  analysis: KitchenAnalysis,
  test: NextTest,
  writing: Writing,
): string =>
  `${nextTestTask(test, analysis, writing)} ${worthText(test, analysis, writing)}`.trimEnd();
