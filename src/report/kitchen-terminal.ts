/**
 * A kitchen's analysis for a terminal: set-ups against cultures first, then advice
 * and the next test, what could not be read, thermometers to look at, notes, and where the report is.
 */
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { adviceLines, nextLines } from "./kitchen-advice-lines.ts";
import { kitchenOverview } from "./kitchen-overview.ts";
import { noteLines, parted, questionLines, unreadLines } from "./kitchen-remarks.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { recheckLines } from "./recheck-lines.ts";
import { labelWidth, safe } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { terminalWriting } from "./writing.ts";

/** The summary as text, lines parted by "\n", ending in one. */
export const toKitchenTerminal = (analysis: KitchenAnalysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.kitchen.shownUnit, options.ascii);
  const screen: KitchenTerminal = { ...options, writing, analysis };
  const report =
    options.report === undefined
      ? []
      : [`  ${"Report".padEnd(labelWidth)}${safe(options.report, screen)}`];
  const remarks = [...unreadLines(screen), ...questionLines(screen), ...noteLines(screen)];
  const advice = [...recheckLines(screen), ...adviceLines(screen), ...nextLines(screen)];
  return [...parted([kitchenOverview(screen), advice, remarks, report]), ""].join("\n");
};
