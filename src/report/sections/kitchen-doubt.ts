/** The uncertainty budget of each set-up: what makes its answers unsure. */
import type { Verdict } from "../../culture/verdict-types.ts";
import type { SetUpAnalysis } from "../../kitchen-analysis-types.ts";
import { setUpId } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { duration } from "../time-text.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { sourceExplanations, sourceNames } from "../wording/names.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { budgetFigure, budgetKey } from "./doubt.ts";
import { more } from "./more.ts";
import { headedPairsTable } from "./pairs-table.ts";

/** The one with the most hours: it asks most of the hours not tested. */
const longest = ({ verdicts }: SetUpAnalysis): Verdict | null =>
  verdicts
    .filter(({ uncertainty }) => uncertainty.length > 0)
    .toSorted((a, b) => b.requirement.hours - a.requirement.hours)[0] ?? null;

const block = ({ analysis, writing }: KitchenPage, setUp: SetUpAnalysis): readonly Markup[] => {
  const verdict = longest(setUp);
  if (verdict === null) return [];
  const name = fullSetUpText(analysis.kitchen, setUp.setUp, writing);
  const budget = {
    components: verdict.uncertainty,
    writing,
    id: `doubt-${setUpId(analysis, setUp)}`,
    title: `Uncertainty budget, ${name}`,
  };
  const { requirement } = verdict;
  const hours = duration(requirement.hours * 60, writing.space);
  return [
    markup`<h3>${name}</h3>
${budgetFigure(budget, `For ${shortCultureName(requirement)}, ${hours}.`)}`,
  ];
};

/** Each source met, explained once. */
const explained = ({ analysis }: KitchenPage): Markup | null => {
  const sources = analysis.setUps.flatMap((setUp) =>
    (longest(setUp)?.uncertainty ?? []).map(({ source }) => source),
  );
  const rows = [...new Set(sources)].map((source) => ({
    label: sourceNames[source],
    text: sourceExplanations[source],
  }));
  const table = headedPairsTable("What each doubt is", rows);
  return table === null ? null : more("What each doubt is", table);
};

export const kitchenDoubt = (page: KitchenPage): Markup | null => {
  const blocks = page.analysis.setUps.flatMap((setUp) => block(page, setUp));
  if (blocks.length === 0) return null;
  return markup`
<section aria-labelledby="doubt">
<h2 id="doubt">Where the doubt comes from</h2>
<p>No thermometer is perfect and one night is not every night. These are the doubts the probabilities count in, each as a standard uncertainty of the temperature.</p>
<p class="small">${budgetKey}</p>
${explained(page)}
${blocks}
</section>`;
};
