/** How growth was reckoned, from which limits, and for which organisms it was not. */
import type { CultureGrowth } from "../../culture/culture-growth.ts";
import type { ProbeAnalysis } from "../../analysis-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { growthMethodText, limitsFrom, limitsText, notModelledTexts } from "../wording/growth.ts";
import type { Writing } from "../writing.ts";
import { growthPlace, organismsOf } from "./growth.ts";
import type { GrownOrganism } from "./growth.ts";

/** A source named just before is not named again. */
const limitsLine = (
  { growth, cultures }: GrownOrganism,
  before: GrownOrganism | undefined,
  writing: Writing,
): Markup => {
  const from = limitsFrom(growth);
  const same = before !== undefined && limitsFrom(before.growth) === from;
  return markup`<li>${growth.organism} (${cultures.join(", ")}) ${limitsText(growth, writing)}. From ${same ? "the same" : from}.</li>\n`;
};

const limitsList = (all: readonly CultureGrowth[], writing: Writing): Markup | null => {
  const organisms = organismsOf(all);
  if (organisms.length === 0) return null;
  return markup`<p>${growthMethodText}</p>
<ul class="small">
${organisms.map((one, at) => limitsLine(one, organisms[at - 1], writing))}</ul>`;
};

/** Nothing where no culture's organisms are known, or no night had a hold. */
export const growthMethod = (
  probes: readonly Pick<ProbeAnalysis, "growth">[],
  writing: Writing,
): Markup | null => {
  const all = probes.flatMap(({ growth = [] }) => growth);
  if (all.length === 0) return null;
  const missing = new Map(
    all.flatMap(({ notModelled }) => notModelled).map((one) => [one.organism, one] as const),
  );
  return markup`
<h3 id="${growthPlace}">Growth, by a model</h3>
${limitsList(all, writing)}
${notModelledTexts([...missing.values()]).map((text) => markup`<p>${text}</p>\n`)}`;
};
