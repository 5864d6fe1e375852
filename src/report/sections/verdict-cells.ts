/** Verdicts in a table: a column for each culture, a cell with mark, chance and what is amiss. */
import type { Requirement, Verdict } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { askedRange } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { gist } from "../wording/gist.ts";
import { verdictNames } from "../wording/names.ts";
import type { Writing } from "../writing.ts";
import { chance } from "./verdict-clauses.ts";

/** More cultures than this do not fit beside each other; they are listed under each row's name. */
const mostColumns = 4;

/** Class of a table with so many columns. */
export const matrixClass = (columns: readonly Requirement[]): string =>
  columns.length > mostColumns ? "matrix listed" : "matrix";

/** What one column asks; rows of one run answer the same, but none is left out if not. */
const question = ({ culture, low, high, hours }: Requirement): string =>
  [culture, low, high, hours].join("\n");

/** Each requirement once, in the order met. */
export const columnsOf = (verdicts: readonly Verdict[]): readonly Requirement[] => [
  ...new Map(verdicts.map(({ requirement }) => [question(requirement), requirement])).values(),
];

export const columnHead = (requirement: Requirement, writing: Writing): Markup =>
  markup`<th role="columnheader" scope="col">${shortCultureName(requirement)}<span class="asked">${askedRange(writing, requirement.low, requirement.high)}, ${duration(requirement.hours * 60, writing.space)}</span></th>`;

/** The culture's name stands in each cell too, shown only where the columns have no room. */
const cell = (verdict: Verdict, confidence: number, writing: Writing): Markup => {
  const words = gist(verdict, writing);
  return markup`<td role="cell" class="${verdict.verdict}"><span class="column">${shortCultureName(verdict.requirement)}</span><span class="mark">${verdictNames[verdict.verdict]}</span> <span class="odds">${chance(verdict, confidence, writing)}</span>${words === null ? null : markup`<span class="gist">${words}</span>`}</td>`;
};

/** One row's cells, one for each column. */
export const verdictCells = (
  verdicts: readonly Verdict[],
  columns: readonly Requirement[],
  confidence: number,
  writing: Writing,
): readonly Markup[] =>
  columns.map((column) => {
    const found = verdicts.find(({ requirement }) => question(requirement) === question(column));
    return found === undefined
      ? markup`<td role="cell" class="none">not asked</td>`
      : cell(found, confidence, writing);
  });
