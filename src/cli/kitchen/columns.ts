/** Rows of words as columns on a terminal; the last column takes what is left and is wrapped. */
import { asciiText, cleanText } from "../../report/clean-text.ts";
import { wrapText } from "../../report/wrap-text.ts";

export const gap = "  ";
const length = (text: string): number => [...text].length;
const padded = (text: string, width: number): string =>
  text + " ".repeat(Math.max(0, width - length(text)));

/** Of each column, its widest cell. */
export const widthsOf = (rows: readonly (readonly string[])[]): readonly number[] =>
  rows.reduce<number[]>(
    (widest, row) => row.map((cell, at) => Math.max(widest[at] ?? 0, length(cell))),
    [],
  );

/** One line for each row, or more where its last cell is long; `width` characters at most where words allow. */
export const columns = (
  rows: readonly (readonly string[])[],
  { width, ascii }: { readonly width: number; readonly ascii: boolean },
): readonly string[] => {
  const plain = rows.map((row) => row.map((cell) => (ascii ? asciiText(cell) : cleanText(cell))));
  const widths = widthsOf(plain);
  const indent = widths.slice(0, -1).reduce((sum, one) => sum + one + gap.length, 0);
  return plain.flatMap((row) => {
    const cells = row.slice(0, -1).map((cell, at) => padded(cell, widths[at] ?? 0) + gap);
    const last = row.at(-1) ?? "";
    return wrapText(last, width, cells.join(""), " ".repeat(indent)).map((line) => line.trimEnd());
  });
};
