import type { LabelledLine } from "../hold-lines.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";

/** A table of two columns: what, and its figure. On a phone the figure stands below. */
export const pairsTable = (caption: string, rows: readonly LabelledLine[]): Markup | null =>
  rows.length === 0 ? null : table(markup`<caption>${caption}</caption>`, rows);

/** The same where a heading already says to the eye what the table is about. */
export const headedPairsTable = (caption: string, rows: readonly LabelledLine[]): Markup | null =>
  rows.length === 0 ? null : table(markup`<caption class="heard">${caption}</caption>`, rows);

const table = (caption: Markup, rows: readonly LabelledLine[]): Markup =>
  markup`<table class="pairs">${caption}<tbody>
${rows.map(({ label, text }) => markup`<tr><th scope="row">${label}</th><td>${text}</td></tr>\n`)}</tbody></table>`;
