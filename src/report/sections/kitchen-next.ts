/** The water test worth doing next, and what would settle the verdicts that are open. */
import type { NextTest, OpenVerdict } from "../../advice/next-types.ts";
import { setUpId } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { nextTestTask } from "../wording/next-test.ts";
import { doubtText, remedyText, withoutText } from "../wording/open-verdicts.ts";
import { probabilityText } from "../wording/probability.ts";
import { fullSetUpText, setUpKey } from "../wording/set-ups.ts";
import { worthText } from "../wording/test-worth.ts";
import { rowsTable } from "./rows-table.ts";
import type { TableRow } from "./rows-table.ts";

/** Later ones gain less; the command shows them all. */
const mostTests = 3;

const testItem = ({ analysis, writing }: KitchenPage, test: NextTest): Markup =>
  markup`<li>${nextTestTask(test, analysis, writing)} <span class="worth">${worthText(test, analysis, writing)}</span></li>\n`;

const nextTests = (page: KitchenPage): Markup | null => {
  const [first, ...others] = page.analysis.advice.next.tests.slice(0, mostTests);
  if (first === undefined) return null;
  const { analysis, writing } = page;
  return markup`<h3>The test worth doing next</h3>
<p class="note">${nextTestTask(first, analysis, writing)} <span class="worth">${worthText(first, analysis, writing)}</span></p>
${others.length === 0 ? null : markup`<p class="small">After that, as things stand:</p>\n<ul class="small">${others.map((test) => testItem(page, test))}</ul>`}`;
};

const openRow = (page: KitchenPage, open: OpenVerdict): TableRow => {
  const { analysis, writing } = page;
  const name = fullSetUpText(analysis.kitchen, open.setUp, writing);
  const tested = analysis.setUps.find(({ setUp }) => setUpKey(setUp) === setUpKey(open.setUp));
  const asked = analysis.requirements.find(({ culture }) => culture === open.culture);
  const culture = asked === undefined ? open.culture : shortCultureName(asked);
  const without = withoutText(open, analysis, writing);
  return {
    head: markup`${tested === undefined ? name : markup`<a href="#${setUpId(analysis, tested)}">${name}</a>`}<span class="asked">${culture}: ${probabilityText(open.probability, analysis.confidence, writing.space)}</span>`,
    cells: [doubtText(open, writing), without ?? "not known", remedyText(open)],
  };
};

const openTable = (page: KitchenPage): Markup | null => {
  const { open } = page.analysis.advice.next;
  if (open.length === 0) return null;
  return markup`<h3>What keeps verdicts open</h3>
${rowsTable({
  caption: "Verdicts that are not proven either way",
  columns: ["Set-up and culture", "Largest doubt", "Without it", "What lessens it"],
  rows: open.map((one) => openRow(page, one)),
})}`;
};

export const kitchenNext = (page: KitchenPage): Markup | null => {
  const tests = nextTests(page);
  const open = openTable(page);
  if (tests === null && open === null) return null;
  return markup`
<section aria-labelledby="next">
<h2 id="next">What to test next</h2>
${tests}
${open}
</section>`;
};
