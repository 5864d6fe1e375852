/** Several answers at a glance: a sentence for each probe, then probes against cultures. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import type { Writing } from "../writing.ts";
import { columnHead, columnsOf, matrixClass, verdictCells } from "./verdict-cells.ts";
import { clauses, separated } from "./verdict-clauses.ts";

export const judgedProbes = ({ probes }: Analysis): readonly ProbeAnalysis[] =>
  probes.filter(({ verdicts }) => verdicts.length > 0);

/** The probe's name, and its file where there are several. */
export const probeTitle = (probe: ProbeAnalysis, { files }: Analysis): Markup =>
  files.length > 1 ? markup`${probe.file}, ${probe.series.name}` : markup`${probe.series.name}`;

const sentences = (analysis: Analysis, writing: Writing): Markup => markup`<ul class="lead">
${judgedProbes(analysis).map(
  (probe) =>
    markup`<li><span class="who">${probeTitle(probe, analysis)}:</span> ${separated(
      clauses(probe.verdicts, analysis.confidence, writing).map(({ text }) => text),
      "; ",
    )}.</li>\n`,
)}</ul>`;

/** Roles are said outright: shown as a list on a phone, a table would lose them. */
const matrix = (analysis: Analysis, writing: Writing): Markup => {
  const probes = judgedProbes(analysis);
  const columns = columnsOf(probes.flatMap(({ verdicts }) => verdicts));
  const rows = probes.map(
    (probe) =>
      markup`<tr role="row"><th role="rowheader" scope="row">${probeTitle(probe, analysis)}</th>${verdictCells(probe.verdicts, columns, analysis.confidence, writing)}</tr>\n`,
  );
  return markup`<table role="table" class="${matrixClass(columns)}"><caption>Which set-up holds which culture, and how likely</caption>
<thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">Probe</th>${columns.map((column) => columnHead(column, writing))}</tr></thead>
<tbody role="rowgroup">
${rows}</tbody></table>`;
};

export const leadBlock = (analysis: Analysis, writing: Writing): Markup => markup`
${sentences(analysis, writing)}
${matrix(analysis, writing)}`;
