/** The uncertainty budget: one bar for each source of doubt, largest first. */
import type { UncertaintyComponent } from "../../culture/verdict-types.ts";
import { celsiusDifferenceToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { uncertaintyFigure } from "../temperature-text.ts";
import { provenanceNames, sourceNames } from "../wording/names.ts";
import { baseConfig, colour, signOf } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";

const rowHeight = 42;

/** Largest first; ties keep the order they came in. */
export const bySize = (
  components: readonly UncertaintyComponent[],
): readonly UncertaintyComponent[] =>
  components.toSorted((a, b) => b.standardUncertainty - a.standardUncertainty);

const sizeText = (value: number, unit: TemperatureUnit): string => {
  const shown = unit === "degC" ? value : celsiusDifferenceToFahrenheit(value);
  return `${uncertaintyFigure(shown)} ${signOf(unit)}`;
};

/** Solid where measured, hollow and dashed where assumed: read without colour. */
const fills = {
  measured: { color: colour.line, fillOpacity: 1, stroke: colour.line },
  stated: { color: colour.line, fillOpacity: 0.35, stroke: colour.line },
  assumed: { color: colour.line, fillOpacity: 0.06, stroke: colour.line, strokeDash: [4, 3] },
} as const;

export const budgetSpec = (
  components: readonly UncertaintyComponent[],
  unit: TemperatureUnit,
  size: Size,
): Spec => {
  const rows = bySize(components).map((component, index) => ({
    zero: 0,
    size: component.standardUncertainty,
    top: index * rowHeight + 20,
    bottom: index * rowHeight + 31,
    labelAt: index * rowHeight + 15,
    from: component.from,
    name: sourceNames[component.source],
    text: `${sizeText(component.standardUncertainty, unit)}, ${provenanceNames[component.from]}`,
  }));
  const most = rows.reduce((so, row) => Math.max(so, row.size), 0) || 1;
  const width = size.width - 8;
  const down = (field: string): Spec => ({
    field,
    type: "quantitative",
    scale: { domain: [rows.length * rowHeight, 0], nice: false },
    axis: null,
  });
  const label = (field: string, align: "left" | "right", color: string): Spec => ({
    data: { values: rows },
    mark: { type: "text", align, baseline: "alphabetic", color },
    encoding: {
      x: { value: align === "left" ? 0 : width },
      y: down("labelAt"),
      text: { field },
    },
  });
  return {
    width,
    height: rows.length * rowHeight,
    config: baseConfig(size),
    layer: [
      ...(["measured", "stated", "assumed"] as const).map((from) => ({
        data: { values: rows.filter((row) => row.from === from) },
        mark: { type: "rect", strokeWidth: 1.2, ...fills[from] },
        encoding: {
          x: {
            field: "zero",
            type: "quantitative",
            scale: { domain: [0, most], nice: false },
            axis: null,
          },
          x2: { field: "size" },
          y: down("top"),
          y2: { field: "bottom" },
        },
      })),
      label("name", "left", colour.ink),
      label("text", "right", colour.muted),
    ],
  };
};
