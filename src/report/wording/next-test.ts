/** A water test worth doing: how, for how long, with what, and what it could settle. */
import type { NextTest } from "../../advice/next-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { fixed } from "../number-format.ts";
import { uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { theEverydayName } from "./everyday-names.ts";
import { theSetUp } from "./set-up-phrases.ts";
import { worthText } from "./test-worth.ts";

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

/** After "every": "30 s", "minute", "2 min", "hour". */
const stepText = (minutes: number, space: string): string => {
  if (minutes === 1) return "minute";
  if (minutes === 60) return "hour";
  return minutes < 1 ? `${fixed(minutes * 60, 0)}${space}s` : duration(minutes, space);
};

/** "a reading every 2 min (by hand at least every 45 min, not in step with its swing of 30 min)". */
const intervalText = ({ interval }: NextTest, { space }: Writing): string => {
  const { loggerMinutes, byHandMinutes, swingMinutes } = interval;
  const step =
    swingMinutes === null ? "" : `, not in step with its swing of ${duration(swingMinutes, space)}`;
  return `a reading every ${stepText(loggerMinutes, space)} (by hand at least every ${stepText(byHandMinutes, space)}${step})`;
};

/** How to do it: two sentences. */
export const nextTestTask = (
  test: NextTest,
  analysis: KitchenAnalysis,
  writing: Writing,
): string => {
  const hours = duration(test.hours * 60, writing.space);
  const day = test.daytime ? "day and night" : "overnight will do";
  return `Test ${theSetUp(analysis.kitchen, test.setUp, writing)}, for ${hours} once it is warm (${day}). Take ${intervalText(test, writing)}${thermometerText(test, analysis, writing)}.`;
};

/** Three sentences or four: what to do, then what it could settle. */
export const nextTestSentence = (
  analysis: KitchenAnalysis,
  test: NextTest,
  writing: Writing,
): string =>
  `${nextTestTask(test, analysis, writing)} ${worthText(test, analysis, writing)}`.trimEnd();
