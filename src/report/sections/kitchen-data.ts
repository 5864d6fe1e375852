/** What was read from each test's files, what was set aside, and what the program noticed. */
import type { AnalysedFile } from "../../analysis-types.ts";
import { readTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { grouped } from "../number-format.ts";
import { kitchenNotes } from "../wording/kitchen-notes.ts";
import type { Writing } from "../writing.ts";
import { fileDetails, noticeList } from "./data-quality.ts";
import { more } from "./more.ts";

const noted = (count: number): string =>
  count === 0 ? "" : `, ${count} ${count === 1 ? "thing" : "things"} noticed`;

const summary = ({ readings }: AnalysedFile): string => {
  const { name, rowsRead, rowsUsed, notices } = readings;
  const aside = rowsRead - rowsUsed;
  const rows =
    aside === 0
      ? `all ${grouped(rowsRead)} rows used`
      : `${grouped(rowsUsed)} of ${grouped(rowsRead)} rows used, ${grouped(aside)} set aside`;
  return `${name}: ${rows}${noted(notices.length)}`;
};

/** Folded where there is more to tell than the counts. */
const fileBlock = (file: AnalysedFile, writing: Writing): Markup => {
  const details = fileDetails(file, writing);
  return details === null
    ? markup`<p class="small">${summary(file)}</p>`
    : more(summary(file), details);
};

export const kitchenData = (page: KitchenPage): Markup | null => {
  const files = readTests(page.analysis).flatMap((test) => test.analysis.files);
  const others = kitchenNotes(page.analysis, page.writing);
  if (files.length === 0 && others.length === 0) return null;
  return markup`
<section aria-labelledby="data">
<h2 id="data">The readings</h2>
<p>Every row is either used or set aside for a reason; the lines below open to show which and where.</p>
${files.map((file) => fileBlock(file, page.writing))}
${others.length === 0 ? null : markup`<h3>Also noted</h3>\n${noticeList(others)}`}
</section>`;
};
