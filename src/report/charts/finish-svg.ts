/**
 * Makes vega's SVG fit for the page: numbers at two decimals, no fonts of its
 * own, no unseen elements, ids that depend on nothing but the chart's own, and
 * words for those who cannot see it. Only tags are touched, never text.
 */
import { textSize } from "./chart-theme.ts";
import type { Caption } from "./chart-theme.ts";
import { imageTag } from "./image.ts";
import { shortPath } from "./short-path.ts";
import { hatchLines } from "./window-looks.ts";
import type { Hatch } from "./window-looks.ts";

const dropped =
  /\s(?:class|role|aria-[a-z]+|pointer-events|font-family|xmlns:xlink|version|(?:fill-)?opacity="1"|stroke-dasharray="(?:1,0)?"|stroke-miterlimit|style)(?:="[^"]*")?/g;
const unseen = /<path(?=[^>]*(?:class="background"|class="foreground"))[^>]*\/>/g;
const longNumber = /-?\d+\.\d{3,}(?:e-?\d+)?/g;

const shortened = (number: string): string => String(Number(Number(number).toFixed(2)) || 0);

/** A width without a stroke draws nothing. */
const strokeless = (tag: string): string =>
  tag.includes(" stroke=") ? tag : tag.replace(/ stroke-width="[^"]*"/, "");

/** Attributes that say what SVG takes for granted. */
const granted = / (?:transform="translate\(0,0\)"|stroke-width="1"|[xy]2="0")/g;
/** Said once, of the whole drawing. */
const usualLetters = ` font-size="${textSize}px"`;

const tidyTag = (tag: string): string =>
  strokeless(tag.replaceAll(dropped, ""))
    .replaceAll(/ d="([^"]*)"/g, (_, path: string) => ` d="${shortPath(path)}"`)
    .replaceAll(longNumber, shortened)
    .replaceAll(granted, "")
    .replaceAll(usualLetters, "");

/** Without groups that say nothing, and their ends. */
const ungrouped = (svg: string): string => {
  const open: boolean[] = [];
  return svg.replaceAll(/<g(?: [^>]*)?>|<\/g>/g, (tag) => {
    if (tag !== "</g>") {
      open.push(tag === "<g>");
      return tag === "<g>" ? "" : tag;
    }
    return open.pop() === true ? "" : tag;
  });
};

/** The first `<svg ...>` becomes an image with a title and a description. */
const opening = (svg: string, caption: Caption): string =>
  svg.replace(/^<svg[^>]*?width="([\d.]+)" height="([\d.]+)"[^>]*>/, (_tag, width, height) =>
    imageTag(caption, `viewBox="0 0 ${width} ${height}" font-size="${textSize}"`),
  );

const hatchedBox =
  /<path d="M(-?[\d.]+),(-?[\d.]+)h([\d.]+)v([\d.]+)h[^"]*" fill="url\(#(rising|falling)\)"\/>/g;

const hatched = (svg: string): string => {
  let count = 0;
  return svg.replaceAll(hatchedBox, (_, ...parts: readonly string[]) => {
    const [left = 0, top = 0, width = 0, height = 0] = parts.slice(0, 4).map(Number);
    count += 1;
    return hatchLines(parts[4] as Hatch, { left, top, width, height }, `hatch${count}`);
  });
};

const ownIds = (svg: string, id: string): string =>
  svg
    .replaceAll(/<clipPath id="([^"]+)"/g, `<clipPath id="${id}-$1"`)
    .replaceAll(/url\(#([^)]+)\)/g, `url(#${id}-$1)`);

export const finishSvg = (svg: string, caption: Caption): string => {
  const tidied = svg
    .replaceAll(unseen, "")
    .replaceAll(/<[^>]+>/g, (tag) => (tag.startsWith("<svg") ? tag : tidyTag(tag)))
    .replaceAll(/<g>\s*<\/g>|<g\/>/g, "");
  return opening(ownIds(hatched(ungrouped(tidied)), caption.id), caption);
};
