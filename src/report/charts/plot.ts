/** One plot of temperature as plain data. */
import type { LineRow } from "./line-rows.ts";

/** All places in px from the plot's upper left corner. */
export interface PlotBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly fill: string;
  readonly opacity: number;
  readonly stroke: string | null;
}

export interface PlotRule {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly stroke: string;
  readonly width: number;
  readonly dash: readonly number[];
}

/** A corridor along a curve, and the curve itself: rows of one `series` belong together, in order of x. */
export interface PlotCorridor {
  readonly series: string;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly fill: string;
  readonly opacity: number;
}

export interface PlotCurve {
  readonly series: string;
  readonly x: number;
  readonly y: number;
  readonly stroke: string;
  readonly dash: readonly number[];
}

/** A single thing at a place, told from others by its shape. */
export interface PlotMarker {
  readonly x: number;
  readonly y: number;
  readonly shape: string;
  readonly fill: string;
  readonly stroke: string;
}

export interface PlotText {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly align: "left" | "right";
  readonly fill: string;
  /** Drawn around the letters, so that they stand out from what lies behind; null for none. */
  readonly halo: string | null;
}

/** Another probe's readings, drawn faintly. */
export interface ContextRow extends LineRow {
  readonly series: string;
  readonly dash: readonly number[];
}

export interface PlotAxis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** What stands at each tick; a list of words stands in as many lines. */
  readonly words: readonly (string | readonly string[])[];
}

export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly padding: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Hours from the first reading, or what else the plot is drawn against. */
  readonly x: PlotAxis;
  /** Temperature in the drawn unit. */
  readonly y: PlotAxis;
  readonly boxes: readonly PlotBox[];
  readonly rules: readonly PlotRule[];
  readonly corridors?: readonly PlotCorridor[];
  readonly curves?: readonly PlotCurve[];
  readonly markers?: readonly PlotMarker[];
  readonly context: readonly ContextRow[];
  readonly line: readonly LineRow[];
  /** Single readings, where there are few of them. */
  readonly points: readonly LineRow[];
  readonly texts: readonly PlotText[];
}
