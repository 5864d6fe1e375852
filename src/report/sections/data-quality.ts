/** What was read, what was set aside and where, and what the program noticed. */
import type { AnalysedFile, Analysis } from "../../analysis.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { grouped } from "../number-format.ts";
import { setAsideNames } from "../wording/names.ts";
import { noticeSentences } from "../wording/notices.ts";
import type { Writing } from "../writing.ts";

const setAsideTable = ({ readings }: AnalysedFile): Markup | null => {
  const rows = [
    ...readings.setAside.map((item) => ({ ...item, what: "row" })),
    ...readings.cellsSetAside.map((item) => ({ ...item, what: `cell of “${item.probe}”` })),
  ];
  if (rows.length === 0) return null;
  return markup`<table><caption>Set aside</caption>
<thead><tr><th scope="col">Why</th><th scope="col" class="number">How many</th><th scope="col" class="number">First at line</th></tr></thead>
<tbody>
${rows.map(
  ({ reason, count, firstLine, what }) =>
    markup`<tr><th scope="row">${setAsideNames[reason]}${what === "row" ? "" : ` (${what})`}</th><td class="number">${grouped(count)}</td><td class="number">${firstLine}</td></tr>\n`,
)}</tbody></table>`;
};

const counted = ({ readings }: AnalysedFile): string => {
  const { rowsRead, rowsUsed } = readings;
  const aside = rowsRead - rowsUsed;
  const base = `${grouped(rowsUsed)} of ${grouped(rowsRead)} rows were used`;
  if (aside === 0) return `${base}: all of them.`;
  return `${base}; ${grouped(aside)} ${aside === 1 ? "was" : "were"} set aside, each for a reason given here.`;
};

export const noticeList = (texts: readonly string[]): Markup | null =>
  texts.length === 0 ? null : markup`<ul>${texts.map((text) => markup`<li>${text}</li>\n`)}</ul>`;

/** What was set aside of a file and what was noticed in it; null where there is nothing to tell. */
export const fileDetails = (file: AnalysedFile, writing: Writing): Markup | null => {
  const aside = setAsideTable(file);
  const notices = noticeList(noticeSentences(file.readings.notices, writing));
  return aside === null && notices === null
    ? null
    : markup`${aside}
${notices}`;
};

const fileBlock = (file: AnalysedFile, writing: Writing): Markup => markup`
<h3>${file.readings.name}</h3>
<p>${counted(file)}</p>
${fileDetails(file, writing)}`;

export const dataQualitySection = (analysis: Analysis, writing: Writing): Markup => {
  const inFiles = noticeSentences(
    analysis.files.flatMap(({ readings }) => readings.notices),
    writing,
  );
  const others = noticeSentences(analysis.notices, writing).filter(
    (text) => !inFiles.includes(text),
  );
  return markup`
<section aria-labelledby="data">
<h2 id="data">The readings</h2>
${analysis.files.map((file) => fileBlock(file, writing))}
${others.length === 0 ? null : markup`<h3>Also noted</h3>\n${noticeList(others)}`}
</section>`;
};
