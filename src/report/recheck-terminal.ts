/**
 * `recheck` on a terminal: each set-up tested twice or more against its
 * baseline, then what follows, what the log says, and which tests are due.
 */
import type { Recheck } from "../advice/recheck-types.ts";
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { markOf } from "./kitchen-page.ts";
import { parted, unreadLines } from "./kitchen-remarks.ts";
import { figureLines } from "./recheck-figures-terminal.ts";
import { associationLines, followBlocks } from "./recheck-follow-terminal.ts";
import type { RecheckScreen } from "./recheck-follow-terminal.ts";
import { coloured, labelled, paragraph } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { isFarOff, nearCultures, recheckCultureText } from "./wording/recheck-cultures.ts";
import { dueText, usualText } from "./wording/recheck-due.ts";
import { recheckRemarks } from "./wording/recheck-figures.ts";
import { loggedTroubleText } from "./wording/recheck-trouble.ts";
import {
  onlySameSetUps,
  recheckClause,
  recheckLooks,
  recheckWords,
  sharedThermometerText,
  whatWouldTell,
} from "./wording/recheck.ts";
import { testAgainText } from "./wording/recheck-again.ts";
import { fullSetUpText } from "./wording/set-ups.ts";
import { terminalWriting } from "./writing.ts";

const cultureLines = (recheck: Recheck, screen: RecheckScreen): string[] => {
  const { analysis } = screen;
  const far = recheck.cultures.filter(isFarOff).map(({ culture }) => markOf(analysis, culture));
  return [
    ...nearCultures(recheck).flatMap((one) =>
      paragraph(
        `${markOf(analysis, one.culture)}: ${recheckCultureText(one, screen)}`,
        screen,
        "  ",
        "    ",
      ),
    ),
    ...(far.length === 0
      ? []
      : paragraph(`Outside its window then and now: ${far.join(", ")}`, screen, "  ", "    ")),
  ];
};

/** Colour goes on last, for it has no width. */
const wordLines = (recheck: Recheck, screen: RecheckScreen): string[] => {
  const word = recheckWords[recheck.word].toUpperCase();
  const [first = "", ...rest] = paragraph(
    `${word} ${recheckClause(recheck, screen.writing)}`,
    screen,
    "  ",
  );
  const verdict = recheckLooks[recheck.word];
  return [`  ${coloured(word, { verdict }, screen)}${first.slice(2 + word.length)}`, ...rest];
};

const recheckBlock = (recheck: Recheck, screen: RecheckScreen): string[] => {
  const { analysis, writing } = screen;
  const name = fullSetUpText(analysis.kitchen, recheck.setUp, writing);
  const more = [
    ...recheckRemarks(recheck, writing),
    sharedThermometerText(recheck),
    whatWouldTell(recheck) ?? "",
  ].filter((text) => text !== "");
  return [
    ...paragraph(name, screen),
    ...wordLines(recheck, screen),
    ...figureLines(recheck, screen),
    ...paragraph(more.join(" "), screen, "  "),
    ...cultureLines(recheck, screen),
  ];
};

const dueLines = (screen: RecheckScreen): string[] =>
  screen.recheck.due.flatMap((due) => {
    const text = dueText(due, screen.analysis.kitchen, screen.writing);
    const usual = usualText(due);
    return text === null ? [] : labelled("Due", usual === null ? text : `${text} ${usual}`, screen);
  });

const troubleLines = (screen: RecheckScreen): string[] => {
  const text = loggedTroubleText(screen.analysis);
  return text === null ? [] : labelled("Caution", text, screen);
};

/** The answer as text, lines parted by "\n", ending in one. */
export const toRecheckTerminal = (analysis: KitchenAnalysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.kitchen.shownUnit, options.ascii);
  const { recheck } = analysis.advice;
  const screen: RecheckScreen = { ...options, writing, analysis, recheck };
  const { rechecks } = recheck;
  const blocks = [
    troubleLines(screen),
    ...rechecks.map((one) => recheckBlock(one, screen)),
    ...followBlocks(screen),
    associationLines(screen),
    dueLines(screen),
    rechecks.length > 0 ? [] : paragraph(testAgainText(screen).join(" "), screen),
    rechecks.length === 0 ? [] : paragraph(onlySameSetUps, screen),
    unreadLines(screen),
  ];
  return [...parted(blocks), ""].join("\n");
};
