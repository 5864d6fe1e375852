/** Draws a spec and reads the picture's words and sizes back. */
import type { Spec } from "../../src/report/charts/chart-theme.ts";
import { renderSvg } from "../../src/report/charts/render-svg.ts";

export const draw = (spec: Spec): Promise<string> =>
  renderSvg({ id: "x", title: "t", description: "d", spec });

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
