/** The uncertainty budget: one bar for each source of doubt, largest first. */
import type { Provenance, UncertaintyComponent } from "../../culture/verdict-types.ts";
import { uncertainty } from "../temperature-text.ts";
import { provenanceNames, sourceNames } from "../wording/names.ts";
import type { Writing } from "../writing.ts";
import { colour, textSize } from "./chart-theme.ts";
import type { Caption } from "./chart-theme.ts";
import { percentOf, stretchedImage } from "./image.ts";

const rowHeight = 42;

/** Largest first; ties keep the order they came in. */
export const bySize = (
  components: readonly UncertaintyComponent[],
): readonly UncertaintyComponent[] =>
  components.toSorted((a, b) => b.standardUncertainty - a.standardUncertainty);

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
  writing: Writing,
): string => {
  const top = at * rowHeight;
  const letters = `y="${top + 15}" font-size="${textSize}"`;
  const bar = `y="${top + 20.5}" width="${percentOf(size / most)}" height="11"`;
  return [
    `<text x="0" ${letters} fill="${colour.ink}">${sourceNames[source]}</text>`,
    `<text x="100%" text-anchor="end" ${letters} fill="${colour.muted}">`,
    `${uncertainty(writing, size).replaceAll("<", "&lt;")}, ${provenanceNames[from]}</text>`,
    `<rect x="0" ${bar} fill="${colour.line}" stroke="${colour.line}" stroke-width="1.2"${looks[from]}/>`,
  ].join("");
};

export const budgetImage = (
  components: readonly UncertaintyComponent[],
  writing: Writing,
  caption: Caption,
): string => {
  const sorted = bySize(components);
  const most = sorted[0]?.standardUncertainty || 1;
  const rows = sorted.map((component, at) => row(component, at, most, writing));
  return stretchedImage(caption, rows.length * rowHeight, rows.join(""));
};
