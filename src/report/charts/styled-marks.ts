/**
 * Boxes, rules and labels that carry their own look in their data, so that one
 * layer draws them all: each further layer costs vega-lite several milliseconds.
 */
import type { Spec } from "./chart-theme.ts";
import type { Stretch } from "./scale-range.ts";

export interface Box {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly fill: string;
  readonly fillOpacity?: number;
  readonly stroke?: string;
}

export interface Rule {
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly stroke: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

export interface Scales {
  readonly x: Stretch;
  readonly y: Stretch;
}

/** Every layer of a panel names the same one: left to itself vega-lite joins zero to it. */
export const fixedScale = ({ low, high }: Stretch): Spec => ({
  domain: [low, high],
  nice: false,
  zero: false,
});

const quantity = (field: string): Spec => ({ field, type: "quantitative" });
/** The datum's own value, not put through a scale. */
const asIs = (field: string): Spec => ({ field, type: "nominal", scale: null });

/** vega-lite takes no dash from data for boxes, so one layer has one dash. */
export const boxLayer = (
  boxes: readonly Box[],
  scales: Scales,
  strokeDash: readonly number[] = [],
): Spec => ({
  data: {
    values: boxes.map(({ from, to, low, high, fill, fillOpacity = 1, stroke }) => ({
      from,
      to,
      low,
      high,
      fill,
      fillOpacity,
      stroke: stroke ?? null,
    })),
  },
  mark: { type: "rect", strokeWidth: 1, strokeDash },
  encoding: {
    x: { ...quantity("from"), scale: fixedScale(scales.x) },
    x2: { field: "to" },
    y: { ...quantity("low"), scale: fixedScale(scales.y) },
    y2: { field: "high" },
    fill: asIs("fill"),
    fillOpacity: { ...quantity("fillOpacity"), scale: null },
    stroke: asIs("stroke"),
  },
});

/** Level lines. */
export const ruleLayer = (rules: readonly Rule[], scales: Scales): Spec => ({
  data: {
    values: rules.map(({ from, to, at, stroke, width, dash = [] }) => ({
      from,
      to,
      at,
      stroke,
      width,
      dash,
    })),
  },
  mark: { type: "rule" },
  encoding: {
    x: { ...quantity("from"), scale: fixedScale(scales.x) },
    x2: { field: "to" },
    y: { ...quantity("at"), scale: fixedScale(scales.y) },
    stroke: asIs("stroke"),
    strokeWidth: { ...quantity("width"), scale: null },
    strokeDash: asIs("dash"),
  },
});
