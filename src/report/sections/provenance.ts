/** What this report was made from, so that anyone can make it again. */
import type { AnalysedFile, Analysis } from "../../analysis.ts";
import { markup, trustedMarkup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { grouped, percent } from "../number-format.ts";
import { askedRange, difference, tolerance, uncertainty } from "../temperature-text.ts";
import { duration, firstReading } from "../time-text.ts";
import { requirementText } from "../wording/answers.ts";
import { cultureName } from "../wording/cultures.ts";
import { provenanceNames, timeFormatNames } from "../wording/names.ts";
import { unitSign } from "../writing.ts";
import type { Writing } from "../writing.ts";
import { pairsTable } from "./pairs-table.ts";

const delimiterNames = {
  ",": "comma",
  ";": "semicolon",
  "\t": "tab",
  "|": "pipe",
  " ": "blanks",
} as const;

export const fileRows = ({ readings, sha256 }: AnalysedFile, writing: Writing) => {
  const start = firstReading(readings);
  return markup`<table class="pairs"><caption>${readings.name}</caption><tbody>
<tr><th scope="row">SHA-256</th><td class="hash">${sha256}</td></tr>
<tr><th scope="row">Rows</th><td>${grouped(readings.rowsRead)} read, ${grouped(readings.rowsUsed)} used</td></tr>
${start === null ? null : markup`<tr><th scope="row">First reading</th><td>${start} by the logger’s clock</td></tr>\n`}<tr><th scope="row">Usual step</th><td>${stepText(readings.intervalSeconds, writing)}</td></tr>
<tr><th scope="row">Read as</th><td>${readings.encoding.toUpperCase()}, fields parted by ${delimiterNames[readings.delimiter]}, decimal ${readings.decimal === "," ? "comma" : "point"}, ${timeFormatNames[readings.timeFormat]}, ${readings.unit === "K" ? "K" : unitSign(writing, readings.unit)}</td></tr>
</tbody></table>`;
};

const stepText = (seconds: number, { space }: Writing): string =>
  seconds < 120 ? `${Number(seconds.toFixed(1))}${space}s` : duration(seconds / 60, space);

const thermometerText = ({ thermometer }: Analysis, writing: Writing): string => {
  const { correction, standardUncertainty, accuracy, from } = thermometer;
  const parts = [
    correction === 0 ? "no correction" : `correction ${difference(writing, correction)}`,
    ...(accuracy === null ? [] : [`specification ${tolerance(writing, accuracy)}`]),
    `standard uncertainty ${uncertainty(writing, standardUncertainty)}`,
    provenanceNames[from],
  ];
  return parts.join(", ");
};

/** Each requirement once, though several probes answer to it. */
const requirementTexts = ({ probes }: Analysis, writing: Writing): readonly string[] => [
  ...new Set(
    probes.flatMap(({ verdicts }) =>
      verdicts.map(
        ({ requirement }) =>
          `${cultureName(requirement)}: ${requirementText(requirement, writing)}`,
      ),
    ),
  ),
];

const optionRows = (analysis: Analysis, writing: Writing) => [
  ...requirementTexts(analysis, writing).map((text) => ({ label: "Asked for", text })),
  { label: "Thermometer", text: thermometerText(analysis, writing) },
  {
    label: "One run to the next",
    text: `standard uncertainty ${uncertainty(writing, analysis.runToRun.value)}, ${provenanceNames[analysis.runToRun.from]}`,
  },
  {
    label: "Room",
    text:
      analysis.room === null
        ? "not given"
        : askedRange(writing, analysis.room.low, analysis.room.high),
  },
  { label: "Share of the time", text: percent(analysis.share, writing.space) },
  { label: "Confidence", text: percent(analysis.confidence, writing.space) },
];

export const provenanceSection = (analysis: Analysis, writing: Writing): Markup => markup`
<section aria-labelledby="provenance">
<h2 id="provenance">What this report was made from</h2>
${analysis.files.map((file) => fileRows(file, writing))}
${pairsTable("Options", optionRows(analysis, writing)) ?? trustedMarkup("")}
</section>`;
