/** An SVG element with the words that stand for it, and simple charts written without a drawing library. */
import { escapeText } from "../markup.ts";
import type { Caption } from "./chart-theme.ts";

/** `size` is what the tag says of its size, as attributes. */
export const imageTag = ({ id, title, description }: Caption, size: string): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" ${size}`,
    ` aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${escapeText(title)}</title>`,
    `<desc id="${id}-desc">${escapeText(description)}</desc>`,
  ].join("");

/** As wide as the page lets it be and of fixed height, px: places along x are in per cent. */
export const stretchedImage = (caption: Caption, height: number, content: string): string =>
  `${imageTag(caption, `width="100%" height="${height}"`)}${content}</svg>`;

/** A share of the whole, 0 to 1, as an attribute's per cent. */
export const percentOf = (share: number): string => `${Number((share * 100).toFixed(2))}%`;
