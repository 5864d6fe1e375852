import type { Correction } from "./correction-model.ts";

/** Whether a thermometer, corrected, is good enough to judge a window. */
export interface WindowFitness {
  readonly word: "good" | "usable" | "too coarse";
  /** Expanded uncertainty U at 95 %, degC. */
  readonly expanded: number;
  /** Part of the window that +-U takes up: 2 U / width. */
  readonly shareTaken: number;
}

/** Window at least four times as wide as the +-U in it: a 4 to 1 test uncertainty ratio, common practice. */
const goodShare = 0.25;
/** Half the window lost to doubt is as far as a verdict in its middle can still stand (our choice). */
const usableShare = 0.5;

/**
 * Judges a correction for a window from `low` to `high`, degC, by its expanded
 * uncertainty. A window without width is never served.
 */
export const judgeForWindow = (
  { expanded }: Correction,
  low: number,
  high: number,
): WindowFitness => {
  const shareTaken = high > low ? (2 * expanded) / (high - low) : Infinity;
  if (shareTaken <= goodShare) return { word: "good", expanded, shareTaken };
  return { word: shareTaken <= usableShare ? "usable" : "too coarse", expanded, shareTaken };
};
