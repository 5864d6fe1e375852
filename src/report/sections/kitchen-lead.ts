/** A kitchen's answers at a glance: a sentence for each set-up, by appliance. */
import type { SetUpAnalysis } from "../../kitchen-analysis-types.ts";
import type { Appliance } from "../../kitchen/kitchen.ts";
import { problemText } from "../../problem.ts";
import { appliancesOf, counted, setUpsOf, unreadTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { fullSetUpText, setUpText } from "../wording/set-ups.ts";
import { withSigns } from "../writing.ts";
import { clauses, separated } from "./verdict-clauses.ts";

/** With more cultures than this, misses are counted here and told in the table. */
const mostInWords = 4;

/** Each clause marked by its word: what holds stands out (style.ts). */
const finding = ({ analysis, writing }: KitchenPage, { verdicts }: SetUpAnalysis): Markup => {
  if (verdicts.length === 0) return markup`tested, but no culture is kept to ask about`;
  const misses = verdicts.filter(({ verdict }) => verdict === "misses").length;
  const folded = verdicts.length > mostInWords && misses > 1;
  const told = folded ? verdicts.filter(({ verdict }) => verdict !== "misses") : verdicts;
  const rest =
    misses === verdicts.length
      ? `misses all${writing.space}${misses}`
      : `misses the other${writing.space}${misses}`;
  const parts = clauses(told, analysis.confidence, writing).map(
    ({ word, text }) => markup`<span class="${word ?? ""}">${text}</span>`,
  );
  return markup`${separated(folded ? [...parts, markup`${rest}`] : parts, "; ")}`;
};

const sentence = (page: KitchenPage, setUp: SetUpAnalysis): Markup =>
  markup`<span class="who">${setUpText(page.analysis.kitchen, setUp.setUp, page.writing)}:</span> ${finding(page, setUp)}.`;

/** Why nothing can be said of an appliance. */
const silence = ({ analysis }: KitchenPage, { id }: Appliance): string => {
  const unread = unreadTests(analysis).filter(({ test }) => test.appliance === id).length;
  if (unread === 0) return "not tested yet";
  return unread === 1 ? "its test could not be read" : `its ${unread} tests could not be read`;
};

const applianceItem = (page: KitchenPage, appliance: Appliance): Markup => {
  const setUps = setUpsOf(page.analysis, appliance);
  const name = markup`<span class="appliance">${appliance.name}</span>`;
  if (setUps.length === 0) return markup`<li>${name}: ${silence(page, appliance)}.</li>\n`;
  return markup`<li>${name}
<ul>${setUps.map((setUp) => markup`<li>${sentence(page, setUp)}</li>\n`)}</ul></li>\n`;
};

const nothingTested = markup`<p>No water test to report on yet: fill an appliance with water, leave a logger in it overnight, and add its file.</p>
`;

export const kitchenLead = (page: KitchenPage): Markup => {
  const appliances = appliancesOf(page.analysis);
  const list = markup`<ul class="lead by-appliance">
${appliances.map((appliance) => applianceItem(page, appliance))}</ul>`;
  return markup`${page.analysis.tests.length === 0 ? nothingTested : null}${appliances.length === 0 ? null : list}`;
};

/** Tests that stand in the kitchen and say nothing yet, each with why. */
export const unreadNote = ({ analysis, writing }: KitchenPage): Markup | null => {
  const unread = unreadTests(analysis);
  if (unread.length === 0) return null;
  return markup`<div class="note unread">
<p><strong>${counted(unread.length, "test")} could not be read</strong> and ${unread.length === 1 ? "is" : "are"} left out of every answer here.</p>
<ul>
${unread.map(({ test, problem }) => markup`<li><b>${fullSetUpText(analysis.kitchen, test, writing)}</b> (${test.id}): ${withSigns(writing, problemText(problem))}</li>\n`)}</ul>
</div>`;
};
