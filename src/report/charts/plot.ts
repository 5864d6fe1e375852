/**
 * One plot of temperature as plain data, and the single vega-lite
 * specification that draws every such plot. Compiling a specification costs
 * far more than drawing one, so the data, the ends of the scales and the ticks
 * are handed in afterwards.
 */
import { baseConfig, colour } from "./chart-theme.ts";
import type { Spec } from "./chart-theme.ts";
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

/** The plot's rows, by the names the specification knows them by. */
export const plotRows = [
  "boxes",
  "rules",
  "corridors",
  "curves",
  "context",
  "line",
  "points",
  "markers",
  "texts",
] as const;

const data = (name: (typeof plotRows)[number]): Spec => ({ name, format: { parse: null } });
const pixels = (field: string): Spec => ({
  field,
  type: "quantitative",
  scale: null,
  axis: null,
});
/** The datum's own value, not put through a scale. */
const asIs = (field: string, type = "nominal"): Spec => ({ field, type, scale: null });
const scaled = (field: string): Spec => ({ field, type: "quantitative" });
const corners = {
  x: pixels("left"),
  x2: { field: "right" },
  y: pixels("top"),
  y2: { field: "bottom" },
};

const axis = (name: "x" | "y"): Spec => ({
  values: { expr: `${name}Ticks` },
  // Else vega drops ticks it finds too many for the plot's size.
  tickCount: 1000,
  labelExpr: `${name}Words[indexof(${name}Ticks, datum.value)]`,
});
/** Every layer shares it: left to itself vega-lite joins zero to a scale. */
const scale = (name: "x" | "y"): Spec => ({
  domain: [{ expr: `${name}Low` }, { expr: `${name}High` }],
  nice: false,
  zero: false,
});
const xAxis = { ...axis("x"), grid: false, ticks: true, tickColor: colour.rule, tickSize: 5 };
const breaking = { type: "line", strokeJoin: "round", invalid: "break-paths-show-path-domains" };

export const plotSpec: Spec = {
  width: 100,
  height: 100,
  autosize: "none",
  config: baseConfig,
  params: [
    ...["xLow", "yLow"].map((name) => ({ name, value: 0 })),
    ...["xHigh", "yHigh"].map((name) => ({ name, value: 1 })),
    ...["xTicks", "xWords", "yTicks", "yWords"].map((name) => ({ name, value: [] })),
  ],
  layer: [
    {
      data: data("boxes"),
      mark: { type: "rect", strokeWidth: 1 },
      encoding: {
        ...corners,
        fill: asIs("fill"),
        fillOpacity: asIs("opacity", "quantitative"),
        stroke: asIs("stroke"),
      },
    },
    {
      data: data("rules"),
      mark: { type: "rule" },
      encoding: {
        ...corners,
        stroke: asIs("stroke"),
        strokeWidth: asIs("width", "quantitative"),
        strokeDash: asIs("dash"),
      },
    },
    {
      data: data("corridors"),
      mark: { type: "area" },
      encoding: {
        x: pixels("x"),
        y: pixels("top"),
        y2: { field: "bottom" },
        detail: { field: "series", type: "nominal" },
        fill: asIs("fill"),
        fillOpacity: asIs("opacity", "quantitative"),
      },
    },
    {
      data: data("curves"),
      mark: { type: "line", strokeJoin: "round", strokeWidth: 1.8 },
      encoding: {
        x: pixels("x"),
        y: pixels("y"),
        detail: { field: "series", type: "nominal" },
        stroke: asIs("stroke"),
        strokeDash: asIs("dash"),
      },
    },
    {
      data: data("context"),
      mark: { ...breaking, color: colour.context, strokeWidth: 1.2 },
      encoding: {
        x: scaled("hour"),
        y: scaled("value"),
        detail: { field: "series", type: "nominal" },
        strokeDash: asIs("dash"),
      },
    },
    {
      data: data("line"),
      mark: { ...breaking, color: colour.line, strokeWidth: 1.5 },
      encoding: {
        x: { ...scaled("hour"), scale: scale("x"), axis: xAxis },
        y: { ...scaled("value"), scale: scale("y"), axis: { ...axis("y"), grid: true } },
        order: { value: null },
      },
    },
    {
      data: data("points"),
      mark: { type: "point", color: colour.line, filled: true, opacity: 1, size: 28 },
      encoding: { x: scaled("hour"), y: scaled("value") },
    },
    {
      data: data("markers"),
      mark: { type: "point", opacity: 1, size: 66, strokeWidth: 1.4 },
      encoding: {
        x: pixels("x"),
        y: pixels("y"),
        shape: asIs("shape"),
        fill: asIs("fill"),
        stroke: asIs("stroke"),
      },
    },
    {
      data: data("texts"),
      mark: { type: "text", align: { expr: "datum.align" }, baseline: "middle", strokeWidth: 3 },
      encoding: {
        x: pixels("x"),
        y: pixels("y"),
        text: { field: "text" },
        fill: asIs("fill"),
        stroke: asIs("halo"),
      },
    },
  ],
};
