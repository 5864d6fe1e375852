/** Of rechecks, in a kitchen's summary on a terminal: what moved, and which tests are due. */
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { labelled } from "./terminal-page.ts";
import { dueText } from "./wording/recheck-due.ts";
import { recheckSentence } from "./wording/recheck.ts";

/** More would push the overview off the screen; the command has them all. */
const mostTold = 2;

const cut = (label: string, texts: readonly string[], screen: KitchenTerminal): string[] => {
  const left = texts.length - mostTold;
  const more = left > 0 ? ` And ${left} more: holdband recheck.` : "";
  return texts
    .slice(0, mostTold)
    .flatMap((text, at) => labelled(label, at === mostTold - 1 ? text + more : text, screen));
};

export const recheckLines = (screen: KitchenTerminal): string[] => {
  const { analysis, writing } = screen;
  const { recheck } = analysis.advice;
  const moved = recheck.rechecks.filter(({ word }) => word === "moved");
  const due = recheck.due.flatMap((one) => dueText(one, analysis.kitchen, writing) ?? []);
  return [
    ...cut(
      "Recheck",
      moved.map((one) => recheckSentence(one, { analysis, recheck, writing })),
      screen,
    ),
    ...cut("Due", due, screen),
  ];
};
