/** Draws a plot and reads the picture's words and sizes back. */
import type { Plot } from "../../src/report/charts/plot.ts";
import { renderSvg } from "../../src/report/charts/render-svg.ts";

export const caption = { id: "x", title: "t", description: "d" };
export const draw = (plot: Plot): Promise<string> => renderSvg({ ...caption, plot });

/** A plot 100 px by 100 px over ten hours from 0 to 10 degrees, with nothing in it but what is given. */
export const bare = (parts: Partial<Plot> = {}): Plot => ({
  width: 100,
  height: 100,
  padding: { left: 0, right: 0, top: 0, bottom: 0 },
  x: { low: 0, high: 10, ticks: [], words: [] },
  y: { low: 0, high: 10, ticks: [], words: [] },
  boxes: [],
  rules: [],
  context: [],
  line: [],
  points: [],
  texts: [],
  ...parts,
});

export const wordsIn = (svg: string): string[] =>
  [...svg.matchAll(/<(?:text|tspan)[^>]*>([^<]+)</g)].map(([, text]) => text!);

export const widthOf = (svg: string): number => Number(/viewBox="0 0 ([\d.]+)/.exec(svg)![1]);

/** What a reader sees of some markup, tags gone and spaces made plain. */
export const visibleText = (html: string): string =>
  html
    .replaceAll(/<svg[\s\S]*?<\/svg>/g, " ")
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("\u00a0", " ")
    .replaceAll(/\s+/g, " ")
    .trim();
