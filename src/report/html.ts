/**
 * The Analysis as one HTML file that stands alone: no script, no network, its
 * own style sheet and nothing else allowed by its policy. The same Analysis and
 * the same `renderedOn` give the same bytes.
 */
import type { Analysis } from "../analysis.ts";
import { markup, trustedMarkup } from "./markup.ts";
import type { Markup } from "./markup.ts";
import { answersSection } from "./sections/answers.ts";
import { cautionsSection } from "./sections/cautions.ts";
import { dataQualitySection } from "./sections/data-quality.ts";
import { doubtSection } from "./sections/doubt.ts";
import { methodSection } from "./sections/method.ts";
import { nightSection } from "./sections/night.ts";
import { provenanceSection } from "./sections/provenance.ts";
import { style, styleHash } from "./style.ts";
import { dateAndClock } from "./time-text.ts";
import { markupWriting } from "./writing.ts";
import type { Writing } from "./writing.ts";

export interface HtmlOptions {
  /** When the report is made, as text; an ISO date and time is shortened to the minute. */
  readonly renderedOn: string;
}

const isoTime = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)[^Z]*Z$/;
const shownDate = (renderedOn: string): string => renderedOn.replace(isoTime, "$1, $2 UTC");

const heading = (analysis: Analysis): string =>
  analysis.files.length === 1 ? "What this water test shows" : "What these water tests show";

const byline = (analysis: Analysis, { renderedOn }: HtmlOptions): Markup => {
  const files = analysis.files.map(({ readings }) => {
    const start = dateAndClock(readings.startWallClock, 0);
    return start === null ? readings.name : `${readings.name}, begun ${start}`;
  });
  return markup`<p class="byline small">${files.join("; ")}. Report made ${shownDate(renderedOn)} by holdband ${analysis.version}.</p>`;
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

const policy = async (): Promise<string> =>
  `default-src 'none'; style-src '${await styleHash()}'; base-uri 'none'; form-action 'none'`;

export const toHtml = async (analysis: Analysis, options: HtmlOptions): Promise<string> => {
  const writing = markupWriting(analysis.shownUnit);
  const names = analysis.files.map(({ readings }) => readings.name).join(", ");
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${trustedMarkup(await policy())}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<title>Water test: ${names}</title>
<style>${trustedMarkup(style)}</style>
</head>
<body>
<a class="skip" href="#answers">To the answer</a>
<div class="sheet">
<header>
<h1>${heading(analysis)}</h1>
${byline(analysis, options)}
</header>
<main id="answers">
${answersSection(analysis, writing)}
${await nightSections(analysis, writing)}
${await doubtSection(analysis, writing)}
${dataQualitySection(analysis, writing)}
${cautionsSection()}
${methodSection(analysis, writing)}
${provenanceSection(analysis, writing)}
</main>
<footer class="small">
<p>Made on your own computer from the files named above; nothing was sent anywhere. It makes no health claim.</p>
</footer>
</div>
</body>
</html>
`.html;
};
