/**
 * The Analysis as one HTML file that stands alone: no script, no network, its
 * own style sheet and nothing else allowed by its policy. The same Analysis and
 * the same `renderedOn` give the same bytes.
 */
import type { Analysis } from "../analysis.ts";
import { htmlPage, htmlParts, shownDate } from "./html-page.ts";
import type { HtmlOptions, HtmlParts } from "./html-page.ts";
import { markup } from "./markup.ts";
import type { Markup } from "./markup.ts";
import { answersSection } from "./sections/answers.ts";
import { cautionsSection } from "./sections/cautions.ts";
import { dataQualitySection } from "./sections/data-quality.ts";
import { doubtSection } from "./sections/doubt.ts";
import { methodSection } from "./sections/method.ts";
import { nightSection } from "./sections/night.ts";
import { provenanceSection } from "./sections/provenance.ts";
import { firstReading } from "./time-text.ts";
import { wholeDates } from "./whole-dates.ts";
import { markupWriting } from "./writing.ts";
import type { Writing } from "./writing.ts";

const heading = (analysis: Analysis): string =>
  analysis.files.length === 1 ? "What this water test shows" : "What these water tests show";

const byline = (analysis: Analysis, { renderedOn }: HtmlOptions): Markup => {
  const files = analysis.files.map(({ readings }) => {
    const start = firstReading(readings);
    return start === null ? readings.name : `${readings.name}, begun ${start}`;
  });
  return markup`<p class="byline small">${wholeDates(`${files.join("; ")}. Report made ${shownDate(renderedOn)} by holdband ${analysis.version}.`)}</p>`;
};

/** The room stands in the others' charts; it has a section only when it is alone. */
const nightSections = (analysis: Analysis, writing: Writing): Promise<readonly Markup[]> => {
  const alone = analysis.probes.length === 1;
  const sections = analysis.probes.map((probe, at) =>
    probe.series.role === "room" && !alone
      ? null
      : nightSection({ analysis, probe, writing, id: `probe-${at + 1}` }),
  );
  return Promise.all(sections.filter((section) => section !== null));
};

/** The report as markup without a document around it; `style` of style.ts is made for it. */
export const toHtmlParts = async (analysis: Analysis, options: HtmlOptions): Promise<HtmlParts> => {
  const writing = markupWriting(analysis.shownUnit);
  const names = analysis.files.map(({ readings }) => readings.name).join(", ");
  return htmlParts({
    title: `Water test: ${names}`,
    heading: heading(analysis),
    byline: byline(analysis, options),
    main: markup`${answersSection(analysis, writing)}
${await nightSections(analysis, writing)}
${await doubtSection(analysis, writing)}
${dataQualitySection(analysis, writing)}
${cautionsSection()}
${methodSection(analysis, writing)}
${provenanceSection(analysis, writing)}`,
  });
};

export const toHtml = async (analysis: Analysis, options: HtmlOptions): Promise<string> =>
  htmlPage(await toHtmlParts(analysis, options));
