/** Where the names of the phases stand above the plot, in as many rows as they need. */
import type { Phase } from "../../hold/hold.ts";
import { phaseName } from "../wording/names.ts";

export interface PhaseLabel {
  readonly text: string;
  /** Middle of the text, px from the plot's left edge. */
  readonly x: number;
  /** 0 is nearest the plot. */
  readonly row: number;
}

/** Without a font at hand: a little more than a usual sans serif needs. */
const characterWidth = 0.58;
const gap = 10;

/** Greedy: each name over its phase's middle, moved up while it would touch another. */
export const placePhaseLabels = (
  phases: readonly Phase[],
  xOf: (minute: number) => number,
  plotWidth: number,
  fontSize: number,
): readonly PhaseLabel[] => {
  const rowEnds: number[] = [];
  return phases.map((phase) => {
    const text = phaseName(phase);
    const half = (text.length * fontSize * characterWidth) / 2;
    const middle = (xOf(phase.fromMinute) + xOf(phase.toMinute)) / 2;
    const x = Math.min(Math.max(middle, half), plotWidth - half);
    const found = rowEnds.findIndex((end) => x - half > end + gap);
    const row = found === -1 ? rowEnds.length : found;
    rowEnds[row] = x + half;
    return { text, x, row };
  });
};
