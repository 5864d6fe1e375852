/** Links to the parts of a long report. */
import { readTests, testId } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { testHeading } from "./kitchen-test.ts";

/** Up to so many tests a report is short enough without. */
const fewTests = 3;

interface Part {
  readonly id: string;
  readonly name: string;
  /** What stands on the page; null where the part is not there. */
  readonly content: Markup | null;
}

const item = (id: string, name: string | Markup): Markup =>
  markup`<li><a href="#${id}">${name}</a></li>\n`;

const items = (parts: readonly Part[]): readonly Markup[] =>
  parts.flatMap(({ id, name, content }) => (content === null ? [] : [item(id, name)]));

/** `before` and `after` are the parts around the tests. */
export const kitchenContents = (
  page: KitchenPage,
  before: readonly Part[],
  after: readonly Part[],
): Markup | null => {
  const tests = readTests(page.analysis);
  if (tests.length <= fewTests) return null;
  return markup`<nav class="contents" aria-label="Contents">
<ul>
${items(before)}<li>The tests
<ul>
${tests.map((test) => item(testId(page.analysis, test), testHeading(page, test)))}</ul></li>
${items(after)}</ul>
</nav>`;
};
