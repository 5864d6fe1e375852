/** The names of the phases above the plot, drawn where phase-labels.ts placed them. */
import { colour } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";
import type { PhaseLabel } from "./phase-labels.ts";

/** Height of one row of names, px. */
export const rowHeight = ({ text }: Size): number => text + 4;

const pixels = (field: string): Spec => ({ field, type: "quantitative", scale: null, axis: null });

/** Each name with a dotted leader down its phase's start. */
export const phaseLayers = (
  labels: readonly PhaseLabel[],
  size: Size,
  plotHeight: number,
): readonly Spec[] => {
  const rows = labels.map(({ text, x: at, from, row }) => ({
    text,
    at,
    from,
    below: -6 - row * rowHeight(size),
    top: -7 - row * rowHeight(size) - size.text * 0.8,
  }));
  return [
    {
      data: { values: rows },
      mark: { type: "rule", color: colour.muted, strokeWidth: 1, strokeDash: [2, 3], opacity: 0.7 },
      encoding: { x: pixels("from"), y: pixels("top"), y2: { value: plotHeight } },
    },
    {
      data: { values: rows },
      mark: { type: "text", align: "left", baseline: "bottom", color: colour.ink },
      encoding: { x: pixels("at"), y: pixels("below"), text: { field: "text" } },
    },
  ];
};
