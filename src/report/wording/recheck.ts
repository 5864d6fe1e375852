/** Whether a set-up is still what it was, in sentences. */
import type {
  Recheck,
  RecheckAdvice,
  RecheckDifference,
  RecheckWord,
} from "../../advice/recheck-types.ts";
import type { VerdictWord } from "../../culture/verdict-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { looksLikeNone, signedRange, sizeOfDifference } from "../signed-difference.ts";
import { calendarDay } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { sentence } from "./everyday-names.ts";
import { theSetUp } from "./set-up-phrases.ts";

/** What every sentence about rechecks is made from. */
export interface RecheckView {
  readonly analysis: KitchenAnalysis;
  readonly recheck: RecheckAdvice;
  readonly writing: Writing;
}

export const recheckWords: Readonly<Record<RecheckWord, string>> = {
  moved: "Moved",
  "not moved": "Not moved",
  "cannot tell": "Cannot tell",
};

/** Marked as the verdict it is nearest to. */
export const recheckLooks: Readonly<Record<RecheckWord, VerdictWord>> = {
  "not moved": "holds",
  moved: "misses",
  "cannot tell": "unproven",
};

/** The date of the baseline's first reading, else what it is. */
export const baselineDay = ({ baseline }: Recheck): string =>
  calendarDay(baseline.startedAt) ?? "its first test";

/** "0.3 °C (0.5 °F) warmer", or "the same". */
export const warmerText = (
  { difference, standardUncertainty }: RecheckDifference,
  writing: Writing,
): string => {
  if (looksLikeNone(difference, standardUncertainty)) return "the same";
  const size = sizeOfDifference(writing, difference, standardUncertainty);
  return `${size} ${difference > 0 ? "warmer" : "colder"}`;
};

const within = (level: RecheckDifference, writing: Writing): string =>
  signedRange(writing, level, level.standardUncertainty);

type Say = (since: string, warmer: string, range: string) => string;

const said: Readonly<Record<RecheckWord, Say>> = {
  moved: (since, warmer, range) =>
    `since ${since}: it now holds ${warmer}, which is more than chance; the difference lies within ${range}`,
  "not moved": (since, warmer, range) =>
    `since ${since}: it now holds ${warmer}, and the difference lies within ${range}, too little to matter to what it held`,
  "cannot tell": (since, warmer, range) =>
    `whether it moved since ${since}: it now holds ${warmer}, but anything within ${range} fits both tests`,
};

/** To stand after the word: baseline against newest. */
export const recheckClause = (recheck: Recheck, writing: Writing): string => {
  const { level, word } = recheck;
  return `${said[word](baselineDay(recheck), warmerText(level, writing), within(level, writing))}.`;
};

/** The same where nothing around it names the set-up. */
export const recheckSentence = (recheck: Recheck, { analysis, writing }: RecheckView): string => {
  const name = theSetUp(analysis.kitchen, recheck.setUp, writing);
  const clause = recheckClause(recheck, writing).slice(0, -1);
  return sentence(`${name}: ${recheckWords[recheck.word].toLowerCase()} ${clause}`);
};

/** Whether what the thermometers are off by is in the difference. */
export const sharedThermometerText = ({ thermometer }: Pick<Recheck, "thermometer">): string =>
  thermometer === "shared"
    ? "The same thermometer took both tests and was not checked anew in between, so whatever it is off by cancels."
    : "The thermometer, or its check, was not the same in both tests, so what each may be off by is part of the doubt.";

/** What would tell, where it cannot be told. */
export const whatWouldTell = ({ word, thermometer }: Recheck): string | null => {
  if (word !== "cannot tell") return null;
  return thermometer === "changed"
    ? "Test it once more, with the same thermometer in the same place: two tests by one thermometer are compared more sharply."
    : "Test it once more: each further test narrows how far one run may lie from the next.";
};

/** Why only one and the same set-up is compared. */
export const onlySameSetUps =
  "Only tests of one and the same set-up are compared here. Another setting or container differs for reasons of its own; what it should give is reckoned from all tests of its appliance (holdband match).";
