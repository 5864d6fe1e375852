import { cellKind } from "../cells/cell-kind.ts";
import { widthOf } from "./dialect.ts";
import type { Delimiter, SampleRecord } from "./dialect.ts";

/** Rows whose decimal commas, written without quotes, have been cut by the comma between columns. */
export interface SplitDecimals {
  /** Cells of a row so cut. */
  readonly width: number;
  /** Numbers at the end of the row, each of which is two cells. */
  readonly numbers: number;
}

const whole = /^\s*[-+\u2212]?\d{1,3}\s*$/u;
const fraction = /^\s*\d{1,3}\s*$/u;

/** True when the last `2 * numbers` cells are pairs of whole and decimal digits. */
const endsInPairs = (cells: readonly string[], numbers: number): boolean => {
  for (let at = cells.length - 2 * numbers; at < cells.length; at += 2)
    if (!whole.test(cells[at] ?? "") || !fraction.test(cells[at + 1] ?? "")) return false;
  return true;
};

const share = (
  rows: readonly SampleRecord[],
  test: (cells: readonly string[]) => boolean,
): number => (rows.length === 0 ? 0 : rows.filter(({ cells }) => test(cells)).length / rows.length);

/** Without headings: one time, then pairs whose second cell is always a single digit. */
const looksSplit = (cells: readonly string[], numbers: number): boolean =>
  cellKind(cells[0] ?? "") === "time" &&
  cells.length === 1 + 2 * numbers &&
  endsInPairs(cells, numbers) &&
  cells.every((cell, at) => at === 0 || at % 2 === 1 || /^\s*\d\s*$/u.test(cell));

/**
 * Finds a comma-delimited file whose unquoted decimal commas have cut its
 * numbers in two ("22:30,41,2"): its rows have more cells than its heading by
 * just the number of such pairs. Null where that is not so.
 */
export const findSplitDecimals = (
  rows: readonly SampleRecord[],
  headings: readonly string[] | null,
  delimiter: Delimiter,
): SplitDecimals | null => {
  const width = rows.reduce((most, { cells }) => Math.max(most, widthOf(cells)), 0);
  if (delimiter !== "," || width < 3) return null;
  if (headings === null) {
    const numbers = (width - 1) / 2;
    if (!Number.isInteger(numbers)) return null;
    return share(rows, (cells) => looksSplit(cells, numbers)) > 0.8 ? { width, numbers } : null;
  }
  const numbers = width - widthOf(headings);
  if (numbers < 1 || 2 * numbers >= width) return null;
  const fits = (cells: readonly string[]): boolean =>
    cells.length === width && endsInPairs(cells, numbers);
  return share(rows, fits) > 0.5 ? { width, numbers } : null;
};

/** The row with its cut numbers joined again, with a decimal comma; rows of another width stay as they are. */
export const joinDecimals = (
  cells: readonly string[],
  { width, numbers }: SplitDecimals,
): readonly string[] => {
  if (cells.length !== width || !endsInPairs(cells, numbers)) return cells;
  const start = width - 2 * numbers;
  const joined = cells.slice(0, start);
  for (let at = start; at < width; at += 2)
    joined.push(`${cells[at] ?? ""},${cells[at + 1] ?? ""}`);
  return joined;
};
