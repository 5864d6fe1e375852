/** The tested hold against one window: a sentence when all of it lay inside, else a strip. */
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

const allInside = (verdict: Verdict, parts: DwellParts, writing: Writing): Markup =>
  markup`<p>All ${duration(parts.inside, writing.space)} of the hold lay inside the ${windowName(verdict, writing)}.</p>`;

export const dwellBlock = (page: ProbePage, verdict: Verdict, at: number): Markup | null => {
  const { probe, writing, id } = page;
  const { hold } = probe.night;
  if (verdict.dwell === null || hold === null) return null;
  const parts = dwellParts(verdict.dwell, hold.hours);
  if (parts.below + parts.above === 0) return allInside(verdict, parts, writing);
  const words = dwellWords(parts, writing);
  const longest = duration(verdict.dwell.longestOutsideMinutes, writing.space);
  const image = dwellImage(parts, {
    id: `${id}-dwell-${at + 1}`,
    title: `Time against the window, probe ${probe.series.name}`,
    description: `Of the hold: ${words.below}, ${words.inside}, ${words.above}.`,
  });
  return stretchedFigure(image, {
    key: (["below", "inside", "above"] as const)
      .filter((part) => parts[part] > 0)
      .map((part) => keyEntry(part, words[part])),
    caption: `The tested hold against the ${windowName(verdict, writing)}. Inside for ${percentInWords(verdict.dwell.insideFraction, writing.space)} of it. The longest spell outside lasted ${longest}.`,
  });
};
