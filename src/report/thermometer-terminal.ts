/** The `thermometer` command's answer: what to add to readings, how sure that is, and whether it will do. */
import type { ThermometerAnalysis } from "../kitchen-analysis-types.ts";
import type { TemperatureUnit } from "../quantity.ts";
import type { BoilingPoint } from "../thermometer/boiling-point.ts";
import type { WindowFitness } from "../thermometer/window-fitness.ts";
import { finite, rounded } from "./contract.ts";
import { thermometerEntry } from "./kitchen-contract.ts";
import { labelled, safe } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { askedTemperature } from "./temperature-text.ts";
import { checkQuestionText } from "./wording/check-questions.ts";
import {
  boilingText,
  correctionRows,
  doubtRows,
  fitnessText,
  knownText,
} from "./wording/thermometers.ts";
import { wrapText } from "./wrap-text.ts";
import { terminalWriting } from "./writing.ts";
import type { Writing } from "./writing.ts";

/** A window the thermometer was judged for. */
export interface JudgedWindow {
  /** The culture's name; null for a window typed by hand. */
  readonly name: string | null;
  readonly low: number;
  readonly high: number;
  readonly fitness: WindowFitness;
}

export interface ThermometerFindings {
  readonly analysis: ThermometerAnalysis;
  /** Where water boiled in its checks; `check` is an index into them. */
  readonly boiling: readonly { readonly check: number; readonly point: BoilingPoint }[];
  readonly windows: readonly JudgedWindow[];
  readonly shownUnit: TemperatureUnit;
  /** File the check was stored in; null where nothing was stored. */
  readonly stored: string | null;
}

const lengthOf = (text: string): number => [...text].length;
const longest = (texts: readonly string[]): number => Math.max(...texts.map(lengthOf), 0);

const plainSpaces = (text: string): string => text.replaceAll("\u00a0", " ");

/** Readings and corrections in two columns, or one below the other where that is too wide. */
const correctionLines = (
  analysis: ThermometerAnalysis,
  writing: Writing,
  options: TerminalOptions,
): string[] => {
  const rows = correctionRows(analysis, writing).map(({ at, text }) => ({
    label: safe(at === null ? "at any reading" : `at ${at}`, options),
    text: safe(text, options),
  }));
  const first = longest(rows.map(({ label }) => label));
  const beside = 6 + first + longest(rows.map(({ text }) => text)) <= options.width;
  if (beside)
    return rows.map(({ label, text }) => plainSpaces(`    ${label.padEnd(first)}  ${text}`));
  return rows.flatMap(({ label, text }) =>
    wrapText(label, options.width, "    ").concat(wrapText(text, options.width, "      ")),
  );
};

const doubtText = (analysis: ThermometerAnalysis, writing: Writing): string =>
  `at ${askedTemperature(writing, analysis.doubts.reading)}, as standard uncertainties: ${doubtRows(
    analysis,
    writing,
  )
    .map(({ label, text }) => `${label} ${text}`)
    .join("; ")}`;

/** The summary as text, lines parted by "\n", ending in one. */
export const thermometerText = (
  { analysis, boiling, windows, shownUnit, stored }: ThermometerFindings,
  options: TerminalOptions,
): string => {
  const writing = terminalWriting(shownUnit, options.ascii);
  const text = (words: string, first = "  "): string[] =>
    wrapText(safe(words, options), options.width, first);
  const line = (label: string, words: string): string[] => labelled(label, words, options);
  // Several checks are often made in one place.
  const boilingTexts = new Set(boiling.map(({ point }) => boilingText(point, writing)));
  return [
    ...text(analysis.thermometer.name, ""),
    ...text(knownText(analysis, writing)),
    ...text("Add to what it shows, with expanded uncertainty (95 of 100 such cases):"),
    ...correctionLines(analysis, writing, options),
    ...[...boilingTexts].flatMap((words) => line("Boiling", words)),
    ...(analysis.doubts.parts.length === 0 ? [] : line("Doubt", doubtText(analysis, writing))),
    ...analysis.questions.flatMap((question) =>
      line("Check", checkQuestionText(question, writing)),
    ),
    ...windows.flatMap((window) => line("Enough?", fitnessText(window, writing))),
    ...(stored === null ? [] : line("Stored", stored)),
    "",
  ].join("\n");
};

/** The same for `--json`; degC. */
export const thermometerContract = (
  { analysis, boiling, windows, stored }: ThermometerFindings,
  version: string,
) =>
  rounded({
    holdband: version,
    contract: 1,
    kind: "thermometer" as const,
    ...thermometerEntry(analysis),
    boiling: boiling.map(({ check, point }) => ({ check, ...point })),
    windows: windows.map(({ name, low, high, fitness }) => ({
      name,
      low,
      high,
      ...fitness,
      shareTaken: finite(fitness.shareTaken),
    })),
    stored,
  });
