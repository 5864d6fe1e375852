/** How the answer was reached: what was measured, what was assumed, what is not known. */
import type { Analysis } from "../../analysis.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percent } from "../number-format.ts";
import { askedRange, difference, tolerance, uncertainty } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import { endedHold, measured, methodSteps, roomReach, untold } from "../wording/method.ts";
import type { MethodStep } from "../wording/method.ts";
import type { Writing } from "../writing.ts";
import { growthMethod } from "./growth-method.ts";

/** Where a culture's hours reach past the hours tested, in words. */
export const promise = (
  { probes }: Pick<Analysis, "probes">,
  { space }: Writing,
): string | null => {
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
    ? `One test cannot show how much one run differs from the next: a standard uncertainty of ${uncertainty(writing, runToRun.value)} was assumed.`
    : null;

/** A kitchen’s coolest to warmest hour where nothing was said, degC; culture/slow-prior.ts counts with the same. */
const usualRoomRange = 4;

export const roomLine = ({ room }: Pick<Analysis, "room">, writing: Writing): string =>
  room === null
    ? `The room’s warmest and coldest were not given: ${difference(writing, usualRoomRange)} between them, day and night, were assumed.`
    : `The room was said to stay within ${askedRange(writing, room.low, room.high)}; it was taken to go through all of it in a day and a night.`;

export const fellAway = ({ probes }: Pick<Analysis, "probes">): boolean =>
  probes.some(({ verdicts }) =>
    verdicts.some(({ reasons }) => reasons.some(({ code }) => code === "fell-away")),
  );

export const list = (lines: readonly (string | null)[]): Markup =>
  markup`<ul>
${lines.filter((text) => text !== null).map((text) => markup`<li>${text}</li>\n`)}</ul>`;

interface Rule {
  readonly share: number;
  readonly confidence: number;
}

/** What the three words mean, in figures. */
export const verdictWords = ({ share, confidence }: Rule, { space }: Writing): Markup =>
  markup`<p><strong>Holds</strong> means a probability of ${percent(confidence, space)} or more that at least ${percent(share, space)} of the culture’s hours lie inside its window and its ceiling is not passed. <strong>Misses</strong> means ${percent(1 - confidence, space)} or less. Anything between is <strong>unproven</strong>.</p>`;

export const stepList = (steps: readonly MethodStep[]): Markup => markup`<dl class="cautions">
${steps.map(({ title, text }) => markup`<div><dt>${title}</dt><dd>${text}</dd></div>\n`)}</dl>`;

export const methodSection = (analysis: Analysis, writing: Writing): Markup => {
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
${verdictWords(analysis, writing)}
${stepList(methodSteps)}${growthMethod(analysis.probes, writing)}
</section>`;
};
