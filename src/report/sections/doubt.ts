/** The uncertainty budget: how sure the hold's level is, and what makes it unsure. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import { budgetImage, bySize } from "../charts/budget.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { uncertainty } from "../temperature-text.ts";
import { quotedProbeName } from "../wording/answers.ts";
import { provenanceNames, sourceExplanations, sourceNames } from "../wording/names.ts";
import type { Writing } from "../writing.ts";
import { stretchedFigure } from "./figure.ts";
import { more } from "./more.ts";
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

const budget = (probe: ProbeAnalysis, analysis: Analysis, writing: Writing, id: string): Markup => {
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  const only = analysis.probes.filter((other) => answersFor(analysis, other)).length === 1;
  const image = budgetImage(probe.uncertainty, analysis.shownUnit, {
    id,
    title: `Uncertainty budget, probe ${probe.series.name}`,
    description: description(probe, writing),
  });
  const explained = markup`<table class="pairs"><caption class="heard">What each doubt is</caption><tbody>
${rowsOf(probe, writing)}</tbody></table>`;
  return markup`${only ? null : markup`<h3>${name}</h3>`}
${stretchedFigure(image, {
  key: [],
  caption:
    "Standard uncertainties. Solid bars were measured, pale ones are as you said, dashed ones are assumed. They add as squares, so the longest bar counts most.",
})}
${more("What each doubt is", explained)}`;
};

export const doubtSection = (analysis: Analysis, writing: Writing): Markup | null => {
  const parts = analysis.probes.flatMap((probe, at) =>
    probe.uncertainty.length === 0 || !answersFor(analysis, probe)
      ? []
      : [budget(probe, analysis, writing, `doubt-${at + 1}`)],
  );
  if (parts.length === 0) return null;
  return markup`
<section aria-labelledby="doubt">
<h2 id="doubt">Where the doubt comes from</h2>
<p>No thermometer is perfect and one night is not every night. These are the doubts the probability counts in, each as a standard uncertainty of the temperature.</p>
${parts}
</section>`;
};
