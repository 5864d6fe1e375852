/** The uncertainty budget: one bar for each source of doubt, largest first. */
import type { Provenance, UncertaintyComponent } from "../../culture/verdict-types.ts";
import { celsiusDifferenceToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { uncertaintyFigure } from "../temperature-text.ts";
import { provenanceNames, sourceNames } from "../wording/names.ts";
import { colour, signOf, textSize } from "./chart-theme.ts";
import type { Caption } from "./chart-theme.ts";
import { percentOf, stretchedImage } from "./image.ts";

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
const looks: Readonly<Record<Provenance, string>> = {
  measured: "",
  stated: ' fill-opacity="0.35"',
  assumed: ' fill-opacity="0.06" stroke-dasharray="4 3"',
};

const row = (
  { source, standardUncertainty: size, from }: UncertaintyComponent,
  at: number,
  most: number,
  unit: TemperatureUnit,
): string => {
  const top = at * rowHeight;
  const letters = `y="${top + 15}" font-size="${textSize}"`;
  const bar = `y="${top + 20.5}" width="${percentOf(size / most)}" height="11"`;
  return [
    `<text x="0" ${letters} fill="${colour.ink}">${sourceNames[source]}</text>`,
    `<text x="100%" text-anchor="end" ${letters} fill="${colour.muted}">`,
    `${sizeText(size, unit).replace("<", "&lt;")}, ${provenanceNames[from]}</text>`,
    `<rect x="0" ${bar} fill="${colour.line}" stroke="${colour.line}" stroke-width="1.2"${looks[from]}/>`,
  ].join("");
};

export const budgetImage = (
  components: readonly UncertaintyComponent[],
  unit: TemperatureUnit,
  caption: Caption,
): string => {
  const sorted = bySize(components);
  const most = sorted[0]?.standardUncertainty || 1;
  const rows = sorted.map((component, at) => row(component, at, most, unit));
  return stretchedImage(caption, rows.length * rowHeight, rows.join(""));
};
