import type { LabelledLine } from "../hold-lines.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";

/** A table of two columns: what, and its figure. On a phone the figure stands below. */
export const pairsTable = (caption: string, rows: readonly LabelledLine[]): Markup | null =>
  rows.length === 0
    ? null
    : markup`<table class="pairs"><caption>${caption}</caption><tbody>
${rows.map(({ label, text }) => markup`<tr><th scope="row">${label}</th><td>${text}</td></tr>\n`)}</tbody></table>`;
