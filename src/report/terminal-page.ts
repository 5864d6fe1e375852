/** What every part of the terminal's summary needs: how wide, which signs, how a verdict is marked. */
import type { Analysis } from "../analysis.ts";
import type { Verdict, VerdictWord } from "../culture/verdict-types.ts";
import { asciiText, cleanText } from "./clean-text.ts";
import { verdictNames } from "./wording/names.ts";
import { probabilityText } from "./wording/probability.ts";
import { wrapText } from "./wrap-text.ts";
import type { Writing } from "./writing.ts";

export interface TerminalOptions {
  readonly colour: boolean;
  readonly ascii: boolean;
  /** Columns of the terminal. */
  readonly width: number;
  /** Where the HTML report was written, if it was. */
  readonly report?: string;
}

export interface Page extends TerminalOptions {
  readonly writing: Writing;
  readonly analysis: Analysis;
}

/** Bright blue, magenta, yellow: told apart in the common colour deficiencies, and never alone. */
const colours: Readonly<Record<VerdictWord, string>> = {
  holds: "\u001b[1;34m",
  misses: "\u001b[1;35m",
  unproven: "\u001b[1;33m",
};
const plain = "\u001b[0m";

export const labelWidth = 10;

export const safe = (text: string, { ascii }: TerminalOptions): string =>
  ascii ? asciiText(text) : cleanText(text);

export const labelled = (label: string, text: string, page: TerminalOptions): string[] =>
  wrapText(
    safe(text, page),
    page.width,
    `  ${label.padEnd(labelWidth)}`,
    " ".repeat(labelWidth + 2),
  );

/** Text on its own lines, wrapped. */
export const paragraph = (
  text: string,
  page: TerminalOptions,
  first = "",
  rest = first,
): string[] => wrapText(safe(text, page), page.width, first, rest);

export const mark = (verdict: Verdict): string => verdictNames[verdict.verdict].toUpperCase();

export const coloured = (
  word: string,
  { verdict }: Pick<Verdict, "verdict">,
  { colour }: TerminalOptions,
): string => (colour ? `${colours[verdict]}${word}${plain}` : word);

/** What a verdict's line needs, of one test or of a kitchen. */
export type VerdictScreen = TerminalOptions & {
  readonly writing: Writing;
  readonly analysis: { readonly confidence: number };
};

export const chanceOf = (verdict: Verdict, { analysis, writing }: VerdictScreen): string =>
  probabilityText(verdict.probability, analysis.confidence, writing.space);
