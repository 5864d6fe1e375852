/** The uncertainty budget: how sure the hold's level is, and what makes it unsure. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { UncertaintyComponent } from "../../culture/verdict-types.ts";
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

type Components = readonly UncertaintyComponent[];

const rowsOf = (components: Components, writing: Writing): readonly Markup[] =>
  bySize(components).map(
    ({ source, standardUncertainty, from }) =>
      markup`<tr><th scope="row">${sourceNames[source]}</th><td>${uncertainty(writing, standardUncertainty)}, ${provenanceNames[from]}. ${sourceExplanations[source]}</td></tr>\n`,
  );

const description = (components: Components, writing: Writing): string =>
  `Standard uncertainties, largest first: ${bySize(components)
    .map(
      ({ source, standardUncertainty, from }) =>
        `${sourceNames[source]} ${uncertainty(writing, standardUncertainty)}, ${provenanceNames[from]}`,
    )
    .join("; ")}.`;

interface Budget {
  readonly components: Components;
  readonly writing: Writing;
  /** Unique on the page. */
  readonly id: string;
  readonly title: string;
}

/** How the bars are to be read. */
export const budgetKey =
  "Standard uncertainties. Solid bars were measured, pale ones are as you said, dashed ones are assumed. They add as squares, so the longest bar counts most.";

/** One budget as bars. */
export const budgetFigure = (
  { components, writing, id, title }: Budget,
  caption: string,
): Markup => {
  const words = { id, title, description: description(components, writing) };
  return stretchedFigure(budgetImage(components, writing, words), { key: [], caption });
};

/** One budget as bars, and folded away in words. */
const budgetBlock = (budget: Budget): Markup => {
  const explained = markup`<table class="pairs"><caption class="heard">What each doubt is</caption><tbody>
${rowsOf(budget.components, budget.writing)}</tbody></table>`;
  return markup`${budgetFigure(budget, budgetKey)}
${more("What each doubt is", explained)}`;
};

const budget = (probe: ProbeAnalysis, analysis: Analysis, writing: Writing, id: string): Markup => {
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  const only = analysis.probes.filter((other) => answersFor(analysis, other)).length === 1;
  const title = `Uncertainty budget, probe ${probe.series.name}`;
  return markup`${only ? null : markup`<h3>${name}</h3>`}
${budgetBlock({ components: probe.uncertainty, writing, id, title })}`;
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
