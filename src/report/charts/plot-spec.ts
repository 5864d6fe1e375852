/**
 * The single vega-lite specification that draws every plot. Compiling one costs
 * far more than drawing, so the data, the ends of the scales and the ticks are
 * handed in afterwards.
 */
import { baseConfig, colour } from "./chart-theme.ts";
import type { Spec } from "./chart-theme.ts";

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
