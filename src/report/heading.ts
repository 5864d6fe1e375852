/** A heading whose level its place on the page decides. */
import { markup, trustedMarkup } from "./markup.ts";
import type { Markup } from "./markup.ts";

export type HeadingLevel = 2 | 3 | 4;

export const heading = (level: HeadingLevel, content: string | Markup): Markup => {
  const tag = trustedMarkup(`h${level}`);
  return markup`<${tag}>${content}</${tag}>`;
};
