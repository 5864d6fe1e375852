/**
 * The Analysis for a terminal: answer first, then why, the hold in a few lines,
 * what to do, what was set aside. The marks are words; colour only adds to them.
 */
import type { Analysis, ProbeAnalysis } from "../analysis.ts";
import type { Verdict } from "../culture/verdict-types.ts";
import { holdSummary } from "./hold-lines.ts";
import { grouped } from "./number-format.ts";
import { overview } from "./terminal-overview.ts";
import { chanceOf, coloured, labelled, labelWidth, mark, safe } from "./terminal-page.ts";
import type { Page, TerminalOptions } from "./terminal-page.ts";
import { answerText, probeName } from "./wording/answers.ts";
import { cultureLine } from "./wording/growth.ts";
import { shortCultureName } from "./wording/cultures.ts";
import { roleNames, setAsideNames } from "./wording/names.ts";
import { nextStep } from "./wording/next-steps.ts";
import { noticeSentences } from "./wording/notices.ts";
import { probeContext, reasonTexts } from "./wording/reasons.ts";
import { wrapText } from "./wrap-text.ts";
import { terminalWriting } from "./writing.ts";
import type { Writing } from "./writing.ts";

/** `what` begins with the verdict's word in brackets, which takes the colour after wrapping. */
const headline = (what: string, verdict: Verdict, page: Page): string[] => {
  const word = `[${mark(verdict)}]`;
  const [first = "", ...rest] = wrapText(safe(what, page), page.width, `${word} `, "  ");
  return [coloured(word, verdict, page) + first.slice(word.length), ...rest];
};

const reasonLines = (verdict: Verdict, probe: ProbeAnalysis, page: Page): string[][] =>
  reasonTexts(verdict.reasons, probeContext(probe, page.analysis, page.writing)).map((text) =>
    wrapText(safe(text, page), page.width, "  - ", "    "),
  );

const nextLines = (verdict: Verdict, page: Page): string[] =>
  labelled("Do next", nextStep(verdict, { writing: page.writing, setUp: null }), page);

/** The only answer, in full. */
const onlyAnswer = (verdict: Verdict, probe: ProbeAnalysis, page: Page): string[] => {
  const { analysis, writing, width } = page;
  const { role } = probe.series;
  const name = probeName(probe.series, probe.file, analysis.files.length > 1);
  return [
    ...headline(
      `${name}, ${roleNames[role]}: ${chanceOf(verdict, page)} likely to hold`,
      verdict,
      page,
    ),
    ...wrapText(safe(answerText(verdict, role, writing), page), width, "  "),
    ...reasonLines(verdict, probe, page).flat(),
    ...nextLines(verdict, page),
  ];
};

const mostCardLines = 6;

/** One of several, short: the reasons that tell most, as far as there is room. */
const card = (verdict: Verdict, probe: ProbeAnalysis, page: Page): string[] => {
  const name = shortCultureName(verdict.requirement);
  const head = headline(`${name}, ${chanceOf(verdict, page)} likely to hold`, verdict, page);
  const next = nextLines(verdict, page);
  const why: string[] = [];
  for (const lines of reasonLines(verdict, probe, page)) {
    const room = mostCardLines - head.length - next.length - why.length;
    if (why.length > 0 && lines.length > room) break;
    why.push(...lines);
  }
  return [...head, ...why, ...next];
};

const several = ({ probes }: Analysis): boolean =>
  probes.reduce((count, { verdicts }) => count + verdicts.length, 0) > 1;

const probeBlock = (probe: ProbeAnalysis, page: Page): string[] => {
  const name = probeName(probe.series, probe.file, page.analysis.files.length > 1);
  const verdicts = several(page.analysis)
    ? [
        ...wrapText(safe(`${name}, ${roleNames[probe.series.role]}`, page), page.width),
        ...probe.verdicts.flatMap((verdict) => card(verdict, probe, page)),
      ]
    : probe.verdicts.flatMap((verdict) => onlyAnswer(verdict, probe, page));
  const alone = verdicts.length === 0 ? [`${name}, ${roleNames[probe.series.role]}`] : [];
  return [
    ...alone.flatMap((title) => wrapText(safe(title, page), page.width)),
    ...verdicts,
    ...holdSummary(probe, page.analysis.share, page.writing).flatMap(({ label, text }) =>
      labelled(label, text, page),
    ),
    ...growthLines(probe, page),
  ];
};

/** At most one for each culture. */
const growthLines = ({ growth = [] }: ProbeAnalysis, page: Page): string[] =>
  growth.flatMap((one) => {
    const text = cultureLine(one, page.writing);
    return text === null ? [] : labelled("Growth", text, page);
  });

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
const allNotices = ({ files, notices }: Analysis, writing: Writing): readonly string[] =>
  noticeSentences([...files.flatMap(({ readings }) => readings.notices), ...notices], writing);

/** The summary as text, lines parted by "\n", ending in one. */
export const toTerminal = (analysis: Analysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.shownUnit, options.ascii);
  const page: Page = { ...options, writing, analysis };
  const blocks = analysis.probes.map((probe) =>
    (probe.series.role === "room" ? roomLine(probe, page) : probeBlock(probe, page)).concat(""),
  );
  const notes = allNotices(analysis, writing).flatMap((text) => labelled("Note", text, page));
  const report =
    options.report === undefined
      ? []
      : [`  ${"Report".padEnd(labelWidth)}${safe(options.report, page)}`];
  const lead = several(analysis) ? overview(page) : [];
  return [...lead, ...blocks.flat(), ...fileLines(page), ...notes, ...report, ""].join("\n");
};
