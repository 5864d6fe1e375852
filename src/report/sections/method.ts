/** How the answer was reached, and what was assumed or is not known. */
import type { Analysis } from "../../analysis.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { temperatureRange, tolerance, uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import { methodSteps } from "../wording/method.ts";
import type { Writing } from "../writing.ts";

/** The longest promise against the longest hold seen, in words; null where either is missing. */
const promise = ({ probes }: Analysis, { space }: Writing): string | null => {
  const needed = probes.flatMap(({ verdicts }) =>
    verdicts.map(({ requirement }) => requirement.hours as number),
  );
  const seen = probes.flatMap(({ night }) => (night.hold === null ? [] : [night.hold.hours]));
  if (needed.length === 0 || seen.length === 0) return null;
  const most = duration(Math.max(...needed) * 60, space);
  return `The test saw ${duration(Math.max(...seen) * 60, space)} of hold. An answer for ${most} reaches beyond that wherever it is longer, and rests on how such appliances usually go on.`;
};

const assumptions = (analysis: Analysis, writing: Writing): readonly string[] => {
  const { thermometer, runToRun, room } = analysis;
  const lines: string[] = [];
  if (thermometer.from === "assumed") {
    const size =
      thermometer.accuracy === null
        ? uncertainty(writing, thermometer.standardUncertainty)
        : tolerance(writing, thermometer.accuracy);
    lines.push(`Nothing was said about the thermometer: it was assumed good to ${size}.`);
  }
  if (runToRun.from === "assumed") {
    lines.push(
      `One test cannot show how much one night differs from another: a standard uncertainty of ${uncertainty(writing, runToRun.value)} was assumed.`,
    );
  }
  lines.push(
    room === null
      ? "The room’s warmest and coldest were not given. A day in a warmer room can lift what one night showed."
      : `The room was said to stay within ${temperatureRange(writing, room.low, room.high)}.`,
  );
  const reach = promise(analysis, writing);
  if (reach !== null) lines.push(reach);
  lines.push(
    "Water stood in for the food. Thicker food warms more slowly and unevenly; the probe tells of its own place only.",
  );
  return lines;
};

export const methodSection = (analysis: Analysis, writing: Writing): Markup => {
  const sure = percent(analysis.confidence, writing.space);
  return markup`
<section aria-labelledby="method">
<h2 id="method">How this was worked out</h2>
<h3>Assumed or not known</h3>
<ul>
${assumptions(analysis, writing).map((text) => markup`<li>${text}</li>\n`)}</ul>
<h3>Words and method</h3>
<p><strong>Holds</strong> means a probability of ${sure} or more that at least ${percent(analysis.share, writing.space)} of the culture’s hours lie inside its window and its ceiling is not passed. <strong>Misses</strong> means ${percent(1 - analysis.confidence, writing.space)} or less. Anything between is <strong>unproven</strong>.</p>
<dl class="cautions">
${methodSteps.map(({ title, text }) => markup`<div><dt>${title}</dt><dd>${text}</dd></div>\n`)}</dl>
</section>`;
};
