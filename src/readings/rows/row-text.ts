import type { Delimiter } from "../text/dialect.ts";

/**
 * Rows that are words rather than damaged readings: summaries, notices, a
 * preamble printed again. Three letters in a row make a word (a month's name
 * beside four digits does not).
 */
export const isTextRow = (cells: readonly string[]): boolean => {
  const filled = cells.map((cell) => cell.trim()).filter((cell) => cell !== "");
  const first = filled[0] ?? "";
  if (first.startsWith("#") || first.startsWith("//")) return true;
  if (!/\d/u.test(filled.join(""))) return true;
  const hasDate = (first.match(/\d/gu)?.length ?? 0) >= 4;
  return /\p{L}{3}/u.test(first)
    ? !hasDate || filled.length === 1
    : filled.length === 1 && /\p{L}{3}/u.test(filled.join(""));
};

/** One text for a row, by which the heading printed again is known. */
export const rowKey = (cells: readonly string[]): string => {
  let width = cells.length;
  while (width > 0 && (cells[width - 1] ?? "").trim() === "") width -= 1;
  return cells
    .slice(0, width)
    .map((cell) => cell.trim().toLowerCase())
    .join("\u001f");
};

/**
 * Which cell is which is not sure: a comma too many in a comma-delimited row of
 * digits ("22:30,41,2"), or a cell left out between blanks.
 */
export const isMisaligned = (
  cells: readonly string[],
  delimiter: Delimiter,
  columnCount: number,
): boolean => {
  if (cells.length === columnCount) return false;
  if (delimiter === " " || delimiter === "  ") return true;
  return (
    cells.length > columnCount &&
    delimiter === "," &&
    cells.slice(columnCount).every((cell) => /^\s*\d+\s*$/u.test(cell))
  );
};
