/** Several verdicts at a glance, for a terminal: a heading for each probe, a line for each culture. */
import type { ProbeAnalysis } from "../analysis.ts";
import type { Verdict } from "../culture/verdict-types.ts";
import { chanceOf, coloured, mark, safe } from "./terminal-page.ts";
import type { Page, VerdictScreen } from "./terminal-page.ts";
import { probeName } from "./wording/answers.ts";
import { shortCultureName } from "./wording/cultures.ts";
import { gist } from "./wording/gist.ts";
import { wrapText } from "./wrap-text.ts";

interface Columns {
  readonly marks: number;
  readonly chances: number;
}

export const columnsOf = (verdicts: readonly Verdict[], page: VerdictScreen): Columns => {
  const longest = (text: (verdict: Verdict) => string): number =>
    verdicts.reduce((most, verdict) => Math.max(most, text(verdict).length), 0);
  return { marks: longest(mark), chances: longest((verdict) => chanceOf(verdict, page)) };
};

export const verdictLine = (
  verdict: Verdict,
  { marks, chances }: Columns,
  page: VerdictScreen,
): string[] => {
  const word = mark(verdict);
  const name = shortCultureName(verdict.requirement);
  const what = gist(verdict, page.writing);
  const [first = "", ...rest] = wrapText(
    safe(what === null ? name : `${name}: ${what}`, page),
    page.width,
    `  ${word.padEnd(marks)}  ${chanceOf(verdict, page).padStart(chances)}  `,
    " ".repeat(marks + chances + 6),
  );
  return [`  ${coloured(word, verdict, page)}${first.slice(word.length + 2)}`, ...rest];
};

const probeLines = (probe: ProbeAnalysis, columns: Columns, page: Page): string[] => {
  const title = probeName(probe.series, probe.file, page.analysis.files.length > 1);
  return [
    ...wrapText(safe(title, page), page.width),
    ...probe.verdicts.flatMap((verdict) => verdictLine(verdict, columns, page)),
    "",
  ];
};

/** Words and probabilities stand in columns; a blank line after each probe. */
export const overview = (page: Page): string[] => {
  const { probes } = page.analysis;
  const columns = columnsOf(
    probes.flatMap(({ verdicts }) => verdicts),
    page,
  );
  return probes.flatMap((probe) =>
    probe.verdicts.length === 0 ? [] : probeLines(probe, columns, page),
  );
};
