/** The names of the phases above the plot, drawn where phase-labels.ts placed them. */
import { colour, textSize } from "./chart-theme.ts";
import type { PhaseLabel } from "./phase-labels.ts";
import type { PlotRule, PlotText } from "./plot.ts";

/** Height of one row of names, px. */
export const rowHeight = textSize + 4;

/** px from the plot's top up to the lowest row's letters' middle. */
const lowest = 6 + textSize / 2;

export interface PhaseMarks {
  readonly rules: readonly PlotRule[];
  readonly texts: readonly PlotText[];
}

/** Each name with a dotted leader down its phase's start. */
export const phaseMarks = (labels: readonly PhaseLabel[], plotHeight: number): PhaseMarks => ({
  rules: labels.map(({ from, row }) => ({
    left: from,
    right: from,
    top: -(lowest + row * rowHeight + textSize / 3),
    bottom: plotHeight,
    stroke: colour.context,
    width: 1,
    dash: [2, 3],
  })),
  texts: labels.map(({ text, x, row }) => ({
    x,
    y: -(lowest + row * rowHeight),
    text,
    align: "left",
    fill: colour.ink,
    halo: null,
  })),
});
