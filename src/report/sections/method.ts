/** How the answer was reached: what was measured, what was assumed, what is not known. */
import type { Analysis } from "../../analysis.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { difference, temperatureRange, tolerance, uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import { endedHold, measured, methodSteps, roomReach, untold } from "../wording/method.ts";
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
  return `One test of ${duration(worst.seen * 60, space)} of hold was seen, and an answer for ${duration(worst.needed * 60, space)} looks beyond it: the hours between rest on how the temperature changed while it was watched and on what was assumed above.`;
};

const thermometerLine = ({ thermometer }: Analysis, writing: Writing): string | null => {
  if (thermometer.from !== "assumed") return null;
  const size =
    thermometer.accuracy === null
      ? uncertainty(writing, thermometer.standardUncertainty)
      : tolerance(writing, thermometer.accuracy);
  return `Nothing was said about the thermometer: it was assumed good to ${size}.`;
};

const runToRunLine = ({ runToRun }: Analysis, writing: Writing): string | null =>
  runToRun.from === "assumed"
    ? `One test cannot show how much one night differs from another: a standard uncertainty of ${uncertainty(writing, runToRun.value)} was assumed.`
    : null;

/** A kitchen’s coolest to warmest hour where nothing was said, degC; culture/slow-prior.ts counts with the same. */
const usualRoomRange = 4;

const roomLine = ({ room }: Analysis, writing: Writing): string =>
  room === null
    ? `The room’s warmest and coldest were not given: ${difference(writing, usualRoomRange)} between them, day and night, were assumed.`
    : `The room was said to stay within ${temperatureRange(writing, room.low, room.high)}; it was taken to go through all of it in a day and a night.`;

const fellAway = ({ probes }: Analysis): boolean =>
  probes.some(({ verdicts }) =>
    verdicts.some(({ reasons }) => reasons.some(({ code }) => code === "fell-away")),
  );

const list = (lines: readonly (string | null)[]): Markup =>
  markup`<ul>
${lines.filter((text) => text !== null).map((text) => markup`<li>${text}</li>\n`)}</ul>`;

export const methodSection = (analysis: Analysis, writing: Writing): Markup => {
  const sure = percent(analysis.confidence, writing.space);
  const assumed = [
    thermometerLine(analysis, writing),
    runToRunLine(analysis, writing),
    roomLine(analysis, writing),
    roomReach,
    fellAway(analysis) ? endedHold : null,
  ];
  return markup`
<section aria-labelledby="method">
<h2 id="method">How this was worked out</h2>
<h3>Measured</h3>
<p>${measured}</p>
<h3>Assumed</h3>
${list(assumed)}
<h3>Not known</h3>
${list([promise(analysis, writing), ...untold])}
<h3>Words and method</h3>
<p><strong>Holds</strong> means a probability of ${sure} or more that at least ${percent(analysis.share, writing.space)} of the culture’s hours lie inside its window and its ceiling is not passed. <strong>Misses</strong> means ${percent(1 - analysis.confidence, writing.space)} or less. Anything between is <strong>unproven</strong>.</p>
<dl class="cautions">
${methodSteps.map(({ title, text }) => markup`<div><dt>${title}</dt><dd>${text}</dd></div>\n`)}</dl>
</section>`;
};
