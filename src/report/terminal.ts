/**
 * The Analysis for a terminal: answer first, then why, the hold in a few lines,
 * what to do, what was set aside. The marks are words; colour only adds to them.
 */
import type { Analysis, ProbeAnalysis } from "../analysis.ts";
import type { Verdict, VerdictWord } from "../culture/verdict-types.ts";
import { noticeText } from "../notice.ts";
import type { Notice } from "../notice.ts";
import { asciiText, cleanText } from "./clean-text.ts";
import { holdSummary } from "./hold-lines.ts";
import { grouped } from "./number-format.ts";
import { answerText, probeName } from "./wording/answers.ts";
import { roleNames, setAsideNames, verdictNames } from "./wording/names.ts";
import { nextStep } from "./wording/next-steps.ts";
import { probabilityText } from "./wording/probability.ts";
import { reasonText } from "./wording/reasons.ts";
import { wrapText } from "./wrap-text.ts";
import { terminalWriting, withSigns } from "./writing.ts";
import type { Writing } from "./writing.ts";

export interface TerminalOptions {
  readonly colour: boolean;
  readonly ascii: boolean;
  /** Columns of the terminal. */
  readonly width: number;
  /** Where the HTML report was written, if it was. */
  readonly report?: string;
}

interface Page extends TerminalOptions {
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

const labelWidth = 10;

const safe = (text: string, { ascii }: TerminalOptions): string =>
  ascii ? asciiText(text) : cleanText(text);

const labelled = (label: string, text: string, page: Page): string[] =>
  wrapText(
    safe(text, page),
    page.width,
    `  ${label.padEnd(labelWidth)}`,
    " ".repeat(labelWidth + 2),
  );

const headline = (verdict: Verdict, probe: ProbeAnalysis, page: Page): string[] => {
  const mark = `[${verdictNames[verdict.verdict].toUpperCase()}]`;
  const several = page.analysis.files.length > 1;
  const chance = probabilityText(verdict.probability, page.analysis.confidence, page.writing.space);
  const name = probeName(probe.series, probe.file, several);
  const [first = "", ...rest] = wrapText(
    safe(`${name}, ${roleNames[probe.series.role]}: ${chance} likely to hold`, page),
    page.width,
    `${mark} `,
    "  ",
  );
  const coloured = page.colour
    ? `${colours[verdict.verdict]}${mark}${plain}${first.slice(mark.length)}`
    : first;
  return [coloured, ...rest];
};

const verdictLines = (verdict: Verdict, probe: ProbeAnalysis, page: Page): string[] => {
  const { analysis, writing, width } = page;
  const context = {
    writing,
    role: probe.series.role,
    thermometerAccuracy: analysis.thermometer.accuracy,
    confidence: analysis.confidence,
  };
  return [
    ...headline(verdict, probe, page),
    ...wrapText(safe(answerText(verdict, probe.series.role, writing), page), width, "  "),
    ...verdict.reasons.flatMap((reason) =>
      wrapText(safe(reasonText(reason, context), page), width, "  - ", "    "),
    ),
    ...labelled("Do next", nextStep(verdict), page),
  ];
};

const probeBlock = (probe: ProbeAnalysis, page: Page): string[] => {
  const several = page.analysis.files.length > 1;
  const name = probeName(probe.series, probe.file, several);
  const title =
    probe.verdicts.length === 0
      ? wrapText(safe(`${name}, ${roleNames[probe.series.role]}`, page), page.width)
      : [];
  return [
    ...title,
    ...probe.verdicts.flatMap((verdict) => verdictLines(verdict, probe, page)),
    ...holdSummary(probe, page.analysis.share, page.writing).flatMap(({ label, text }) =>
      labelled(label, text, page),
    ),
  ];
};

/** The room needs no hold; it stands in one line. */
const roomLine = (probe: ProbeAnalysis, page: Page): string[] => [
  ...wrapText(safe(`${probe.series.name}: the room's readings, no verdict`, page), page.width),
];

const fileLines = (page: Page): string[] =>
  page.analysis.files.flatMap(({ readings }) => {
    const aside = readings.setAside.map(
      ({ reason, count, firstLine }) =>
        `${grouped(count)} (${setAsideNames[reason]}; first at line ${firstLine})`,
    );
    const counts = `${readings.name}: ${grouped(readings.rowsUsed)} of ${grouped(readings.rowsRead)} rows used`;
    const text = aside.length === 0 ? counts : `${counts}; set aside: ${aside.join("; ")}`;
    return labelled("Readings", text, page);
  });

/** Each notice once, in the order met. */
export const allNotices = (analysis: Analysis): readonly string[] => {
  const texts = [
    ...analysis.files.flatMap(({ readings }) => readings.notices),
    ...analysis.notices,
  ];
  return [...new Set(texts.map((item: Notice) => noticeText(item)))];
};

/** The summary as text, lines parted by "\n", ending in one. */
export const toTerminal = (analysis: Analysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.shownUnit, options.ascii);
  const page: Page = { ...options, writing, analysis };
  const blocks = analysis.probes.map((probe) =>
    (probe.series.role === "room" ? roomLine(probe, page) : probeBlock(probe, page)).concat(""),
  );
  const notes = allNotices(analysis).flatMap((text) =>
    labelled("Note", withSigns(writing, text), page),
  );
  const report =
    options.report === undefined
      ? []
      : [`  ${"Report".padEnd(labelWidth)}${safe(options.report, page)}`];
  return [...blocks.flat(), ...fileLines(page), ...notes, ...report, ""].join("\n");
};
