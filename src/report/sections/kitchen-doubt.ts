/** The uncertainty budget of each set-up: what makes its answers unsure. */
import type { UncertaintyComponent } from "../../culture/verdict-types.ts";
import type { SetUpAnalysis } from "../../kitchen-analysis-types.ts";
import { setUpId } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { budgetBlock } from "./doubt.ts";

/** That of the culture with the most hours: the one that asks most of the hours not tested. */
const budgetOf = ({ verdicts }: SetUpAnalysis): readonly UncertaintyComponent[] =>
  verdicts
    .toSorted((a, b) => b.requirement.hours - a.requirement.hours)
    .map(({ uncertainty }) => uncertainty)
    .find(({ length }) => length > 0) ?? [];

const block = ({ analysis, writing }: KitchenPage, setUp: SetUpAnalysis): readonly Markup[] => {
  const components = budgetOf(setUp);
  if (components.length === 0) return [];
  const name = fullSetUpText(analysis.kitchen, setUp.setUp, writing);
  const id = `doubt-${setUpId(analysis, setUp)}`;
  const title = `Uncertainty budget, ${name}`;
  return [
    markup`<h3>${name}</h3>
${budgetBlock({ components, writing, id, title })}`,
  ];
};

export const kitchenDoubt = (page: KitchenPage): Markup | null => {
  const blocks = page.analysis.setUps.flatMap((setUp) => block(page, setUp));
  if (blocks.length === 0) return null;
  return markup`
<section aria-labelledby="doubt">
<h2 id="doubt">Where the doubt comes from</h2>
<p>No thermometer is perfect and one night is not every night. These are the doubts the probabilities count in, each as a standard uncertainty of the temperature, for the culture with the longest hours.</p>
${blocks}
</section>`;
};
