/** What follows from rechecks and the log, on a terminal: advice, other causes in their order, the log's association. */
import type { BatchFinding, RecheckAdvice } from "../advice/recheck-types.ts";
import { markOf } from "./kitchen-page.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { paragraph } from "./terminal-page.ts";
import { whatFollows } from "./wording/recheck-follow.ts";
import type { Follow } from "./wording/recheck-follow.ts";
import { separationCauseText } from "./wording/separation-causes.ts";
import { associationTexts, causesTitle, loggedCauses, silenceText } from "./wording/separation.ts";
import { theSetUp } from "./wording/set-up-phrases.ts";

export type RecheckScreen = KitchenTerminal & { readonly recheck: RecheckAdvice };

const causeLines = (finding: BatchFinding, screen: RecheckScreen): string[] => {
  const title = causesTitle(finding);
  const silence = silenceText(finding, screen.writing);
  return [
    ...(title === null ? [] : paragraph(title, screen, "  ")),
    ...loggedCauses(finding).flatMap((cause, at) => {
      const { what, next } = separationCauseText(cause, screen.writing);
      return paragraph(`${at + 1}. ${what} ${next}`, screen, "  ", "     ");
    }),
    ...(silence === null ? [] : paragraph(silence, screen, "  ")),
  ];
};

const followLines = (follow: Follow, screen: RecheckScreen): string[] => {
  const { analysis, writing } = screen;
  const where = theSetUp(analysis.kitchen, follow.setUp, writing);
  const head = `${markOf(analysis, follow.culture)} in ${where}: ${follow.text}`;
  return [
    ...paragraph(head, screen),
    ...(follow.advice === null ? [] : paragraph(follow.advice, screen, "  ")),
    ...(follow.finding === null ? [] : causeLines(follow.finding, screen)),
  ];
};

/** One block each. */
export const followBlocks = (screen: RecheckScreen): readonly (readonly string[])[] =>
  whatFollows(screen).map((follow) => followLines(follow, screen));

/** What the whole log says, whatever the set-up. */
export const associationLines = (screen: RecheckScreen): string[] =>
  associationTexts(
    screen.recheck,
    (culture) => markOf(screen.analysis, culture),
    screen.writing,
  ).flatMap((text) => paragraph(text, screen));
