/** The uncertainty budget: how sure the hold's level is, and what makes it unsure. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import { budgetSpec, bySize } from "../charts/budget.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { uncertainty } from "../temperature-text.ts";
import { quotedProbeName } from "../wording/answers.ts";
import { provenanceNames, sourceExplanations, sourceNames } from "../wording/names.ts";
import type { Writing } from "../writing.ts";
import { figure } from "./figure.ts";
import { answersFor } from "./probe-page.ts";

const rowsOf = (probe: ProbeAnalysis, writing: Writing): readonly Markup[] =>
  bySize(probe.uncertainty).map(
    ({ source, standardUncertainty, from }) =>
      markup`<tr><th scope="row">${sourceNames[source]}</th><td>${uncertainty(writing, standardUncertainty)}, ${provenanceNames[from]}. ${sourceExplanations[source]}</td></tr>\n`,
  );

const description = (probe: ProbeAnalysis, writing: Writing): string =>
  `Standard uncertainties, largest first: ${bySize(probe.uncertainty)
    .map(
      ({ source, standardUncertainty, from }) =>
        `${sourceNames[source]} ${uncertainty(writing, standardUncertainty)}, ${provenanceNames[from]}`,
    )
    .join("; ")}.`;

const budget = async (
  probe: ProbeAnalysis,
  analysis: Analysis,
  writing: Writing,
  id: string,
): Promise<Markup> => {
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  const only = analysis.probes.filter((other) => answersFor(analysis, other)).length === 1;
  const drawing = await figure({
    id,
    title: `Uncertainty budget, probe ${probe.series.name}`,
    description: description(probe, writing),
    spec: (size) => budgetSpec(probe.uncertainty, analysis.shownUnit, size),
    key: [],
    caption:
      "Standard uncertainties. Solid bars were measured, pale ones are as you said, dashed ones are assumed. They add as squares, so the longest bar counts most.",
  });
  return markup`${only ? null : markup`<h3>${name}</h3>`}
${drawing}
<table class="pairs"><caption>What each doubt is</caption><tbody>
${rowsOf(probe, writing)}</tbody></table>`;
};

export const doubtSection = async (
  analysis: Analysis,
  writing: Writing,
): Promise<Markup | null> => {
  const parts = await Promise.all(
    analysis.probes.flatMap((probe, at) =>
      probe.uncertainty.length === 0 || !answersFor(analysis, probe)
        ? []
        : [budget(probe, analysis, writing, `doubt-${at + 1}`)],
    ),
  );
  if (parts.length === 0) return null;
  return markup`
<section aria-labelledby="doubt">
<h2 id="doubt">Where the doubt comes from</h2>
<p>No thermometer is perfect and one night is not every night. These are the doubts the probability counts in, each as a standard uncertainty of the temperature.</p>
${parts}
</section>`;
};
