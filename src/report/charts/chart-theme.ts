/**
 * What all charts share. Colours are the page's CSS variables, so that one SVG
 * serves light, dark and print; vega passes such values through unread.
 */
import type { TemperatureUnit } from "../../quantity.ts";
import { celsiusToFahrenheit } from "../../quantity.ts";

/** A vega-lite specification as plain data; vega-lite itself is loaded only to draw. */
export type Spec = Readonly<Record<string, unknown>>;

/** The words that stand for a chart where it cannot be seen. */
export interface Caption {
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/** Plots are drawn twice: for a page and for a phone, since shrunk text cannot be read. */
export interface Size {
  readonly name: "wide" | "narrow";
  /** Of the whole drawing, px. */
  readonly width: number;
}
export const sizes: readonly Size[] = [
  { name: "wide", width: 720 },
  { name: "narrow", width: 344 },
];

/** Height of letters in all charts, px. */
export const textSize = 12.5;

export const colour = {
  ink: "var(--ink)",
  muted: "var(--muted)",
  rule: "var(--rule)",
  paper: "var(--paper)",
  line: "var(--line)",
  context: "var(--context)",
  window: "var(--window)",
  windowEdge: "var(--window-edge)",
  band: "var(--band)",
  guard: "var(--guard)",
  limit: "var(--limit)",
} as const;

export const baseConfig: Spec = {
  aria: false,
  background: null,
  view: { stroke: null },
  // Rows are checked before they get here; vega-lite would check each again.
  mark: { invalid: null },
  axis: {
    domain: false,
    ticks: false,
    gridColor: colour.rule,
    gridWidth: 1,
    labelColor: colour.muted,
    labelFontSize: textSize,
    labelPadding: 6,
    labelOverlap: false,
    labelBound: false,
    labelFlush: false,
    // Words are cut to fit before they get here; without a font vega would guess.
    labelLimit: 0,
    title: null,
  },
  text: { fontSize: textSize },
};

/** degC as it stands on the drawn scale. */
export const toScale = (unit: TemperatureUnit, celsius: number): number =>
  unit === "degC" ? celsius : celsiusToFahrenheit(celsius);

/** The drawn scale's value in the other unit, and back. */
export const toOther = (unit: TemperatureUnit, shown: number): number =>
  unit === "degC" ? shown * 1.8 + 32 : (shown - 32) / 1.8;
export const fromOther = (unit: TemperatureUnit, other: number): number =>
  unit === "degC" ? (other - 32) / 1.8 : other * 1.8 + 32;

export const signOf = (unit: TemperatureUnit): string => (unit === "degC" ? "°C" : "°F");
