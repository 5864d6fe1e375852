/**
 * HTML by template: whatever is put into `markup` is escaped, unless it is
 * Markup itself. So a name from a file can never become an element.
 */
import { cleanText } from "./clean-text.ts";

export interface Markup {
  readonly html: string;
}

type Part = Markup | string | number | null | readonly Part[];

const signs: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text that is safe both between tags and inside a quoted attribute. */
export const escapeText = (text: string): string =>
  cleanText(text).replaceAll(/[&<>"']/g, (sign) => signs[sign] ?? sign);

const render = (part: Part): string => {
  if (part === null) return "";
  if (typeof part === "string") return escapeText(part);
  if (typeof part === "number") return String(part);
  if ("html" in part) return part.html;
  return part.map(render).join("");
};

export const markup = (strings: TemplateStringsArray, ...parts: readonly Part[]): Markup => ({
  html: strings.map((text, index) => text + render(parts[index] ?? null)).join(""),
});

/** For SVG made by render-svg.ts and the page's own style: already markup. */
export const trustedMarkup = (html: string): Markup => ({ html });
