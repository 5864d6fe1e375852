/** Several answers at a glance: a sentence for each probe, then probes against cultures. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Requirement, Verdict } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { askedRange } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { gist, missGist, openGist } from "../wording/gist.ts";
import { verdictNames } from "../wording/names.ts";
import { probabilityText } from "../wording/probability.ts";
import type { Writing } from "../writing.ts";

/** More cultures than this do not fit beside each other; they are listed under each probe. */
const mostColumns = 4;

export const judgedProbes = ({ probes }: Analysis): readonly ProbeAnalysis[] =>
  probes.filter(({ verdicts }) => verdicts.length > 0);

const chance = ({ probability }: Verdict, { confidence }: Analysis, writing: Writing): string =>
  probabilityText(probability, confidence, writing.space);

/** "holds for", "1.8 °C (3.2 °F) too warm for", "not proven for": whatever a culture's name can follow. */
const opening = (verdict: Verdict, writing: Writing): string => {
  if (verdict.verdict === "holds") return "holds for";
  return verdict.verdict === "misses" ? `${missGist(verdict, writing)} for` : "not proven for";
};

const named = (verdict: Verdict, analysis: Analysis, writing: Writing): Markup => {
  const settled = verdict.verdict === "unproven" ? `; ${openGist(verdict)}` : "";
  return markup`<b>${shortCultureName(verdict.requirement)}</b> (${chance(verdict, analysis, writing)}${settled})`;
};

const separated = (parts: readonly Markup[], separator: string): readonly Markup[] =>
  parts.map((part, at) => (at === 0 ? part : markup`${separator}${part}`));

/** What holds first; cultures of the same finding together. */
const clauses = (probe: ProbeAnalysis, analysis: Analysis, writing: Writing): readonly Markup[] => {
  const order = ["holds", "unproven", "misses"];
  const found = new Map<string, Verdict[]>();
  for (const verdict of probe.verdicts.toSorted(
    (a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict),
  )) {
    const key = opening(verdict, writing);
    found.set(key, [...(found.get(key) ?? []), verdict]);
  }
  return [...found].map(
    ([key, verdicts]) =>
      markup`${key} ${separated(
        verdicts.map((verdict) => named(verdict, analysis, writing)),
        ", ",
      )}`,
  );
};

/** The probe's name, and its file where there are several. */
export const probeTitle = (probe: ProbeAnalysis, { files }: Analysis): Markup =>
  files.length > 1 ? markup`${probe.file}, ${probe.series.name}` : markup`${probe.series.name}`;

const sentences = (analysis: Analysis, writing: Writing): Markup => markup`<ul class="lead">
${judgedProbes(analysis).map(
  (probe) =>
    markup`<li><span class="who">${probeTitle(probe, analysis)}:</span> ${separated(clauses(probe, analysis, writing), "; ")}.</li>\n`,
)}</ul>`;

const columnHead = (requirement: Requirement, writing: Writing): Markup =>
  markup`${shortCultureName(requirement)}<span class="asked">${askedRange(writing, requirement.low, requirement.high)}, ${duration(requirement.hours * 60, writing.space)}</span>`;

/** The culture's name stands in each cell too, shown only where the columns have no room. */
const cell = (verdict: Verdict, analysis: Analysis, writing: Writing): Markup => {
  const words = gist(verdict, writing);
  return markup`<td role="cell" class="${verdict.verdict}"><span class="column">${shortCultureName(verdict.requirement)}</span><span class="mark">${verdictNames[verdict.verdict]}</span> <span class="odds">${chance(verdict, analysis, writing)}</span>${words === null ? null : markup`<span class="gist">${words}</span>`}</td>`;
};

/** What one column asks; probes of one run answer the same, but none is left out if not. */
const question = ({ culture, low, high, hours }: Requirement): string =>
  [culture, low, high, hours].join("\n");

const columnsOf = (probes: readonly ProbeAnalysis[]): readonly Requirement[] => {
  const asked = probes.flatMap(({ verdicts }) => verdicts.map(({ requirement }) => requirement));
  return [...new Map(asked.map((requirement) => [question(requirement), requirement])).values()];
};

const matrixRow = (
  probe: ProbeAnalysis,
  columns: readonly Requirement[],
  analysis: Analysis,
  writing: Writing,
): Markup => {
  const cells = columns.map((column) => {
    const found = probe.verdicts.find(
      ({ requirement }) => question(requirement) === question(column),
    );
    return found === undefined
      ? markup`<td role="cell" class="none">not asked</td>`
      : cell(found, analysis, writing);
  });
  return markup`<tr role="row"><th role="rowheader" scope="row">${probeTitle(probe, analysis)}</th>${cells}</tr>\n`;
};

/** Roles are said outright: shown as a list on a phone, a table would lose them. */
const matrix = (analysis: Analysis, writing: Writing): Markup => {
  const probes = judgedProbes(analysis);
  const columns = columnsOf(probes);
  const heads = columns.map(
    (requirement) =>
      markup`<th role="columnheader" scope="col">${columnHead(requirement, writing)}</th>`,
  );
  return markup`<table role="table" class="matrix${columns.length > mostColumns ? " listed" : ""}"><caption>Which set-up holds which culture, and how likely</caption>
<thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">Probe</th>${heads}</tr></thead>
<tbody role="rowgroup">
${probes.map((probe) => matrixRow(probe, columns, analysis, writing))}</tbody></table>`;
};

export const leadBlock = (analysis: Analysis, writing: Writing): Markup => markup`
${sentences(analysis, writing)}
${matrix(analysis, writing)}`;
