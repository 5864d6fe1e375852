/**
 * A kitchen's analysis for a terminal: set-ups against cultures first, then what
 * could not be read, thermometers to look at, notes, and where the report is.
 */
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { problemText } from "../problem.ts";
import { unreadTests } from "./kitchen-page.ts";
import { kitchenOverview } from "./kitchen-overview.ts";
import { labelled, labelWidth, safe } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { checkQuestionText } from "./wording/check-questions.ts";
import { kitchenNotes } from "./wording/kitchen-notes.ts";
import { fullSetUpText } from "./wording/set-ups.ts";
import { terminalWriting, withSigns } from "./writing.ts";
import type { Writing } from "./writing.ts";

interface Screen extends TerminalOptions {
  readonly writing: Writing;
  readonly analysis: KitchenAnalysis;
}

const unreadLines = (screen: Screen): string[] =>
  unreadTests(screen.analysis).flatMap(({ test, problem }) => {
    const name = fullSetUpText(screen.analysis.kitchen, test, screen.writing);
    const why = withSigns(screen.writing, problemText(problem));
    return labelled("Not read", `${name} (${test.id}): ${why}`, screen);
  });

const questionLines = (screen: Screen): string[] =>
  screen.analysis.thermometers.flatMap(({ thermometer, questions }) =>
    questions.flatMap((question) =>
      labelled(
        "Check",
        `${thermometer.name}: ${checkQuestionText(question, screen.writing)}`,
        screen,
      ),
    ),
  );

/** Notices of single files stand in the report. */
const noteLines = (screen: Screen): string[] =>
  kitchenNotes(screen.analysis, screen.writing).flatMap((text) => labelled("Note", text, screen));

const parted = (blocks: readonly (readonly string[])[]): string[] =>
  blocks
    .filter(({ length }) => length > 0)
    .flatMap((block, at) => (at === 0 ? block : [""].concat(block)));

/** The summary as text, lines parted by "\n", ending in one. */
export const toKitchenTerminal = (analysis: KitchenAnalysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.kitchen.shownUnit, options.ascii);
  const screen: Screen = { ...options, writing, analysis };
  const report =
    options.report === undefined
      ? []
      : [`  ${"Report".padEnd(labelWidth)}${safe(options.report, screen)}`];
  const remarks = [...unreadLines(screen), ...questionLines(screen), ...noteLines(screen)];
  return [...parted([kitchenOverview(screen), remarks, report]), ""].join("\n");
};
