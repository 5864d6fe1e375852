/** A kitchen's answers at a glance, by appliance: which cultures it holds and how, and the one change worth making. */
import type { Appliance } from "../../kitchen/kitchen.ts";
import { problemText } from "../../problem.ts";
import { appliancesOf, counted, setUpsOf, unreadTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { standingOf } from "../kitchen-standing.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { chancesText, changeProviso, nextTestText } from "../wording/first-answers.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { withSigns } from "../writing.ts";
import { pairing } from "./kitchen-match.ts";
import { standingRows } from "./kitchen-standing-rows.ts";

/** Why nothing can be said of an appliance. */
const silence = ({ analysis }: KitchenPage, { id }: Appliance): string => {
  const unread = unreadTests(analysis).filter(({ test }) => test.appliance === id).length;
  if (unread === 0) return "Not tested yet.";
  return unread === 1 ? "Its test could not be read." : `Its ${unread} tests could not be read.`;
};

const silent = (text: string): readonly Markup[] => [markup`<li class="rest">${text}</li>\n`];

const rowsOf = (page: KitchenPage, appliance: Appliance): readonly Markup[] => {
  const setUps = setUpsOf(page.analysis, appliance);
  if (setUps.length === 0) return silent(silence(page, appliance));
  return setUps.every(({ verdicts }) => verdicts.length === 0)
    ? silent("Tested, but no culture is kept to ask about.")
    : standingRows(page, appliance);
};

const nothingTested = markup`<p>No water test to report on yet: fill an appliance with water, leave a logger in it overnight, and add its file.</p>
`;

/** How the rows are to be read; null where no culture was asked about. */
const readingHelp = ({ analysis }: KitchenPage): Markup | null => {
  const tested = appliancesOf(analysis).filter((one) => setUpsOf(analysis, one).length > 0);
  if (tested.length === 0 || analysis.requirements.length === 0) return null;
  const changes = tested.some((one) => standingOf(analysis, one).change !== null);
  return markup`<p class="small">${chancesText}${changes ? ` ${changeProviso}` : ""}</p>`;
};

const nextStep = ({ analysis, writing }: KitchenPage): Markup | null => {
  const [first] = analysis.advice.next.tests;
  return first === undefined
    ? null
    : markup`<p class="next-step"><strong>Test next:</strong> ${nextTestText(first, analysis, writing)}. <a href="#next">How, and what it may settle</a></p>`;
};

export const kitchenLead = (page: KitchenPage): Markup => {
  const appliances = appliancesOf(page.analysis);
  const list = markup`<ul class="by-appliance">
${appliances.map((one) => markup`<li><h3>${one.name}</h3>\n<ul>\n${rowsOf(page, one)}</ul></li>\n`)}</ul>`;
  return markup`<section aria-labelledby="in-short">
<h2 id="in-short" class="heard">In short</h2>
${page.analysis.tests.length === 0 ? nothingTested : null}${pairing(page)}
${appliances.length === 0 ? null : list}
${readingHelp(page)}
${nextStep(page)}
</section>`;
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
