/** How the answer was reached, and what was assumed or is not known. */
import type { Analysis } from "../../analysis.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { temperatureRange, tolerance, uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import { methodSteps } from "../wording/method.ts";
import type { Writing } from "../writing.ts";

/** Where a culture's hours reach past the hours tested, in words. */
const promise = ({ probes }: Analysis, { space }: Writing): string | null => {
  const beyond = probes.flatMap(({ verdicts, night }) =>
    verdicts
      .map(({ requirement }) => ({
        needed: requirement.hours as number,
        seen: night.hold?.hours ?? 0,
      }))
      .filter(({ needed, seen }) => seen > 0 && needed > seen),
  );
  const [worst] = beyond.toSorted((a, b) => b.needed - b.seen - (a.needed - a.seen));
  if (worst === undefined) return null;
  return `The test saw ${duration(worst.seen * 60, space)} of hold, and an answer for ${duration(worst.needed * 60, space)} looks beyond it. It rests on how the temperature changed while it was watched, and on how such appliances usually go on.`;
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
