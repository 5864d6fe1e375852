/** Each thermometer: how it is known, what to add to what it shows, and what looks wrong in its checks. */
import type { ThermometerAnalysis } from "../../kitchen-analysis-types.ts";
import { readTests } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { askedTemperature } from "../temperature-text.ts";
import { checkQuestionText } from "../wording/check-questions.ts";
import { correctionRows, doubtRows, knownText } from "../wording/thermometers.ts";
import type { Writing } from "../writing.ts";
import { testLinks } from "./kitchen-links.ts";
import { more } from "./more.ts";
import { pairsTable } from "./pairs-table.ts";

const questionNote = ({ questions }: ThermometerAnalysis, writing: Writing): Markup | null =>
  questions.length === 0
    ? null
    : markup`<div class="note"><p><strong>Look at ${questions.length === 1 ? "this check" : "these checks"} again.</strong></p>
<ul>
${questions.map((question) => markup`<li>${checkQuestionText(question, writing)}</li>\n`)}</ul></div>`;

const corrections = (one: ThermometerAnalysis, writing: Writing): Markup | null =>
  pairsTable(
    "To add to what it shows, with expanded uncertainty",
    correctionRows(one, writing).map(({ at, text }) => ({
      label: at === null ? "Whatever it shows" : `Where it shows ${at}`,
      text,
    })),
  );

/** Folded: it explains the figures above. A single source is named there already. */
const doubts = (one: ThermometerAnalysis, writing: Writing): Markup | null => {
  const caption = `Standard uncertainties where it shows ${askedTemperature(writing, one.doubts.reading)}`;
  const rows = doubtRows(one, writing);
  const table = pairsTable(caption, rows);
  return table === null || rows.length < 2 ? null : more("Where its doubt comes from", table);
};

/** Tests that were made with it. */
const usedIn = ({ analysis }: KitchenPage, { thermometer }: ThermometerAnalysis): Markup => {
  const tests = readTests(analysis).filter((test) =>
    test.analysis.probes.some(({ thermometerId }) => thermometerId === thermometer.id),
  );
  if (tests.length === 0) return markup`No test here was made with it.`;
  const what = tests.length === 1 ? "the test of" : "the tests of";
  return markup`Used in ${what} ${testLinks(analysis, tests)}.`;
};

const block = (page: KitchenPage, one: ThermometerAnalysis): Markup => markup`
<h3>${one.thermometer.name}</h3>
<p>${knownText(one, page.writing)} ${usedIn(page, one)}</p>
${questionNote(one, page.writing)}
${corrections(one, page.writing)}
${doubts(one, page.writing)}`;

export const kitchenThermometers = (page: KitchenPage): Markup | null => {
  const { thermometers } = page.analysis;
  if (thermometers.length === 0) return null;
  return markup`
<section aria-labelledby="thermometers">
<h2 id="thermometers">Thermometers</h2>
<p>A thermometer is judged by what it shows where the truth is known. The expanded uncertainty is the doubt that stays: the truth lies within it in 95 of 100 such cases.</p>
${thermometers.map((one) => block(page, one))}
</section>`;
};
