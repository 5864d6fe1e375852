/** Where the names of the phases stand above the plot, in as many rows as they need. */
import type { Phase } from "../../hold/hold.ts";
import { phaseName } from "../wording/names.ts";

export interface PhaseLabel {
  readonly text: string;
  /** Left edge of the text, px from the plot's left edge. */
  readonly x: number;
  /** Where the phase begins, px: a leader goes from here up to the text. */
  readonly from: number;
  /** 0 is nearest the plot. */
  readonly row: number;
}

/** Without a font at hand: a little more than a usual sans serif needs. */
const characterWidth = 0.6;
const gap = 9;
const besideLeader = 4;

/**
 * Each name starts at its phase's start. From right to left, a name goes up a
 * row while it would touch one already placed, so names read like a stair,
 * first phase highest.
 */
export const placePhaseLabels = (
  phases: readonly Phase[],
  xOf: (minute: number) => number,
  plotWidth: number,
  fontSize: number,
): readonly PhaseLabel[] => {
  const rowStarts: number[] = [];
  const placed = phases.toReversed().map((phase): PhaseLabel => {
    const text = phaseName(phase);
    const width = text.length * fontSize * characterWidth;
    const from = xOf(phase.fromMinute);
    const x = Math.min(from + besideLeader, plotWidth - width);
    const found = rowStarts.findIndex((start) => x + width + gap < start);
    const row = found === -1 ? rowStarts.length : found;
    rowStarts[row] = x;
    return { text, x, from, row };
  });
  return placed.toReversed();
};
