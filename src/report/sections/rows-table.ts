/** A table of a few columns; on a phone each row becomes a list, every figure under its column's name. */
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";

export interface TableRow {
  readonly head: string | Markup;
  /** One for each column but the first. */
  readonly cells: readonly (string | Markup)[];
}

interface TableParts {
  readonly caption: string;
  readonly columns: readonly [string, ...(string | Markup)[]];
  readonly rows: readonly TableRow[];
}

export const rowsTable = ({ caption, columns, rows }: TableParts): Markup => {
  const [first, ...others] = columns;
  const row = ({ head, cells }: TableRow): Markup =>
    markup`<tr role="row"><th role="rowheader" scope="row">${head}</th>${cells.map((cell, at) => markup`<td role="cell"><span class="column">${others[at] ?? ""}</span>${cell}</td>`)}</tr>\n`;
  return markup`<table role="table" class="rows"><caption>${caption}</caption>
<thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">${first}</th>${others.map((name) => markup`<th role="columnheader" scope="col">${name}</th>`)}</tr></thead>
<tbody role="rowgroup">
${rows.map(row)}</tbody></table>`;
};
