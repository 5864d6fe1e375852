/** A terminal for the tests of what advice looks like on one. */
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import type { KitchenTerminal } from "../../src/report/kitchen-remarks.ts";
import { terminalWriting } from "../../src/report/writing.ts";

export const screenOf = (
  analysis: KitchenAnalysis,
  more: Partial<KitchenTerminal> = {},
): KitchenTerminal => ({
  colour: false,
  ascii: false,
  width: 80,
  writing: terminalWriting("degC", more.ascii === true),
  analysis,
  ...more,
});

/** As one line, for what wrapping must not hide. */
export const flat = (lines: readonly string[] | string): string =>
  (typeof lines === "string" ? lines : lines.join(" ")).replaceAll(/\s+/g, " ");

export const longestOf = (lines: readonly string[]): number =>
  lines.reduce((most, line) => Math.max(most, [...line].length), 0);

/** Colour codes of a terminal. */
// oxlint-disable-next-line no-control-regex
export const colourCodes = /\u001b\[[\d;]*m/g;
