/** `next` on a terminal: the water test worth doing next, some others in short, and every open verdict. */
import type { NextTest, OpenVerdict } from "../advice/next-types.ts";
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { markOf } from "./kitchen-page.ts";
import { missingLines, parted, unreadLines } from "./kitchen-remarks.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { paragraph } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { duration } from "./time-text.ts";
import { noTestsYet } from "./wording/missing-parts.ts";
import { nextTestSentence } from "./wording/next-test.ts";
import { openVerdictText } from "./wording/open-verdicts.ts";
import { fullSetUpText } from "./wording/set-ups.ts";
import { settledBy } from "./wording/test-worth.ts";
import type { Settled } from "./wording/test-worth.ts";
import { terminalWriting } from "./writing.ts";

const firstBlock = ([first]: readonly NextTest[], screen: KitchenTerminal): string[] => {
  if (first === undefined) return [];
  const text = nextTestSentence(screen.analysis, first, screen.writing);
  return [...paragraph("Worth doing next", screen), ...paragraph(text, screen, "  ")];
};

const mostOthers = 4;

/** "may prove yoghurt; may prove or rule out reuteri". */
const mayProve = (test: NextTest, { analysis }: KitchenTerminal): string => {
  const settled = settledBy(test, analysis);
  const say = (words: string, told: (one: Settled) => boolean): string[] => {
    const marks = settled.filter(told).map(({ culture }) => markOf(analysis, culture));
    return marks.length === 0 ? [] : [`may ${words} ${marks.join(", ")}`];
  };
  return [
    ...say("prove", ({ misses }) => misses === null),
    ...say("prove or rule out", ({ holds, misses }) => holds !== null && misses !== null),
    ...say("rule out", ({ holds }) => holds === null),
  ].join("; ");
};

const otherLine = (test: NextTest, screen: KitchenTerminal): string[] => {
  const { analysis, writing } = screen;
  const what = mayProve(test, screen);
  const setUp = fullSetUpText(analysis.kitchen, test.setUp, writing);
  const text = `${setUp}, for ${duration(test.hours * 60, writing.space)}${what === "" ? "" : `: ${what}`}`;
  return paragraph(text, screen, "  - ", "    ");
};

const othersBlock = ([, ...others]: readonly NextTest[], screen: KitchenTerminal): string[] =>
  others.length === 0
    ? []
    : [
        ...paragraph("After that", screen),
        ...others.slice(0, mostOthers).flatMap((test) => otherLine(test, screen)),
      ];

const openLine = (open: OpenVerdict, screen: KitchenTerminal): string[] => {
  const { analysis, writing } = screen;
  const setUp = fullSetUpText(analysis.kitchen, open.setUp, writing);
  const text = `${setUp}, ${markOf(analysis, open.culture)}: ${openVerdictText(analysis, open, writing)}`;
  return paragraph(text, screen, "  - ", "    ");
};

const openBlock = (open: readonly OpenVerdict[], screen: KitchenTerminal): string[] =>
  open.length === 0
    ? []
    : [
        ...paragraph("Open verdicts, and what keeps each open", screen),
        ...open.flatMap((one) => openLine(one, screen)),
      ];

/** When to test again although all is decided: common practice, no source. */
const again =
  "Test again when the season changes, when the appliance is moved, when container or amount change, and when batches begin to separate (common practice).";

const nothingToTest = ({ setUps, advice }: KitchenAnalysis): string => {
  if (setUps.length === 0)
    return "Begin with any appliance, set as you use it: one night with water.";
  return advice.next.open.length === 0
    ? `No verdict is open, and no further water test would be expected to decide anything. ${again}`
    : `No one water test would be expected to decide what is open. ${again}`;
};

/** The answer as text, lines parted by "\n", ending in one. */
export const toNextTerminal = (analysis: KitchenAnalysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.kitchen.shownUnit, options.ascii);
  const screen: KitchenTerminal = { ...options, writing, analysis };
  const missing = missingLines(screen);
  if (missing.length > 0) return [...missing, ""].join("\n");
  const { tests, open } = analysis.advice.next;
  const untested = noTestsYet(analysis);
  const blocks = [
    untested === null ? [] : paragraph(untested, screen),
    tests.length > 0 ? [] : paragraph(nothingToTest(analysis), screen),
    firstBlock(tests, screen),
    othersBlock(tests, screen),
    openBlock(open, screen),
    unreadLines(screen),
  ];
  return [...parted(blocks), ""].join("\n");
};
