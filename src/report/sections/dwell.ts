/** The tested hold against one window: a sentence when all of it lay on one side of an edge, else a strip. */
import type { Verdict } from "../../culture/verdict-types.ts";
import { dwellImage, dwellParts } from "../charts/dwell.ts";
import type { DwellParts } from "../charts/dwell.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { percentInWords } from "../number-format.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { keyEntry, stretchedFigure } from "./figure.ts";
import { windowName } from "./probe-page.ts";
import type { ProbePage } from "./probe-page.ts";

const dwellWords = (parts: DwellParts, { space }: Writing) => ({
  below: `below for ${duration(parts.below, space)}`,
  inside: `inside for ${duration(parts.inside, space)}`,
  above: `above for ${duration(parts.above, space)}`,
});

const order = ["below", "inside", "above"] as const;

/** A strip of one colour tells no more than this. */
const allInOne = (
  part: (typeof order)[number],
  minutes: number,
  verdict: Verdict,
  writing: Writing,
): Markup =>
  markup`<p>All ${duration(minutes, writing.space)} of the hold lay ${part} the ${windowName(verdict, writing)}.</p>`;

export const dwellBlock = (page: ProbePage, verdict: Verdict, at: number): Markup | null => {
  const { probe, writing, id } = page;
  const { hold } = probe.night;
  if (verdict.dwell === null || hold === null) return null;
  const parts = dwellParts(verdict.dwell, hold.hours);
  const [first, ...others] = order.filter((part) => parts[part] > 0);
  if (first === undefined || others.length === 0) {
    const part = first ?? "inside";
    return allInOne(part, parts[part], verdict, writing);
  }
  const words = dwellWords(parts, writing);
  const longest = duration(verdict.dwell.longestOutsideMinutes, writing.space);
  const image = dwellImage(parts, {
    id: `${id}-dwell-${at + 1}`,
    title: `Time against the window, probe ${probe.series.name}`,
    description: `Of the hold against the ${windowName(verdict, writing)}: ${words.below}, ${words.inside}, ${words.above}.`,
  });
  return stretchedFigure(image, {
    key: order.filter((part) => parts[part] > 0).map((part) => keyEntry(part, words[part])),
    caption: `The tested hold against the ${windowName(verdict, writing)}. Inside for ${percentInWords(verdict.dwell.insideFraction, writing.space)} of it. The longest spell outside lasted ${longest}.`,
  });
};
