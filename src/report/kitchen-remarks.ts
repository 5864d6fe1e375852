/** What a kitchen's answer on a terminal leaves open: tests that could not be read, checks to look at, notes. */
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { problemText } from "../problem.ts";
import { unreadTests } from "./kitchen-page.ts";
import { labelled, paragraph } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { checkQuestionText } from "./wording/check-questions.ts";
import { kitchenNotes } from "./wording/kitchen-notes.ts";
import { missingParts } from "./wording/missing-parts.ts";
import { fullSetUpText } from "./wording/set-ups.ts";
import { withSigns } from "./writing.ts";
import type { Writing } from "./writing.ts";

export interface KitchenTerminal extends TerminalOptions {
  readonly writing: Writing;
  readonly analysis: KitchenAnalysis;
}

export const unreadLines = (screen: KitchenTerminal): string[] =>
  unreadTests(screen.analysis).flatMap(({ test, problem }) => {
    const name = fullSetUpText(screen.analysis.kitchen, test, screen.writing);
    const why = withSigns(screen.writing, problemText(problem));
    return labelled("Not read", `${name} (${test.id}): ${why}`, screen);
  });

export const questionLines = (screen: KitchenTerminal): string[] =>
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
export const noteLines = (screen: KitchenTerminal): string[] =>
  kitchenNotes(screen.analysis, screen.writing).flatMap((text) => labelled("Note", text, screen));

/** What must be entered before there can be advice, each command on its own line. */
export const missingLines = (screen: KitchenTerminal): string[] =>
  missingParts(screen.analysis).flatMap(({ text, command }) =>
    paragraph(text, screen).concat(`  ${command}`),
  );

/** A blank line between the blocks that say something. */
export const parted = (blocks: readonly (readonly string[])[]): string[] =>
  blocks
    .filter(({ length }) => length > 0)
    .flatMap((block, at) => (at === 0 ? block : [""].concat(block)));
