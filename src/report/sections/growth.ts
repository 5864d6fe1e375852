/** What a model makes of a night's growth: a line for each organism, folded away where there are several. */
import type { CultureGrowth, OrganismGrowth } from "../../culture/culture-growth.ts";
import { heading } from "../heading.ts";
import type { HeadingLevel } from "../heading.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import {
  nightCaution,
  nightLead,
  nightLimits,
  organismText,
  shortOrganism,
} from "../wording/growth.ts";
import { more } from "./more.ts";
import type { ProbePage } from "./probe-page.ts";

/** An organism with the cultures it belongs to; its figures are the same for all of them. */
export interface GrownOrganism {
  readonly growth: OrganismGrowth;
  readonly cultures: readonly string[];
}

/** Each organism once, in the order met. */
export const organismsOf = (all: readonly CultureGrowth[]): readonly GrownOrganism[] => {
  const found = new Map<string, GrownOrganism>();
  for (const { culture, organisms } of all) {
    for (const growth of organisms) {
      const cultures = found.get(growth.organism)?.cultures ?? [];
      found.set(growth.organism, { growth, cultures: [...new Set([...cultures, culture])] });
    }
  }
  return [...found.values()];
};

const title = "Growth, by a model";

/** Where the method of growth stands on the page. */
export const growthPlace = "growth";

/** Nothing where no organism has figures. */
export const growthPart = ({ probe, writing }: ProbePage, level: HeadingLevel): Markup | null => {
  const { hold } = probe.night;
  const organisms = organismsOf(probe.growth ?? []);
  if (hold === null || organisms.length === 0) return null;
  const lines = organisms.map(
    ({ growth, cultures }) =>
      markup`<li>${shortOrganism(growth.organism)} (${cultures.join(", ")}): ${organismText(growth, writing)}</li>\n`,
  );
  const content = markup`<p class="small">${nightLead(hold.hours, writing)}<a href="#${growthPlace}">${nightLimits}</a>${nightCaution}</p>
<ul>
${lines}</ul>`;
  return organisms.length > 1
    ? markup`${more(title, content)}\n`
    : markup`${heading(level, title)}\n${content}\n`;
};
