import type { Scan } from "./scan.ts";

/**
 * The characters of the stamp scanned last, by position: rows of a log mostly
 * differ in their digits alone, so a row with the same characters elsewhere
 * needs no scan, only its numbers.
 */
export interface Template {
  /** Takes the cells that `scan` was just filled from as the template. */
  learn(scan: Scan, cells: readonly string[]): void;
  /** True: the cells match, and the numbers in `scan` are theirs; all else in it stays. */
  fill(scan: Scan, cells: readonly string[]): boolean;
  /** Forgets: `scan` holds something else now. */
  clear(): void;
}

/** Longer stamps are scanned each time. */
const longest = 64;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isNumber = (kind: number): boolean => "dtYHBx".includes(String.fromCharCode(kind));

/** The places of the numbers among the tokens. */
const numbersOf = (scan: Scan): number[] =>
  [...scan.kinds.subarray(0, scan.length).keys()].filter((token) => isNumber(scan.kinds[token]!));

export const createTemplate = (): Template => {
  const lengths: number[] = [];
  const codes = new Uint16Array(longest);
  // Token that ends with this digit; -1 for digits before it; -2 for other characters.
  const ends = new Int8Array(longest);

  const clear = (): void => {
    lengths.length = 0;
  };
  const learn = (scan: Scan, cells: readonly string[]): void => {
    clear();
    if (cells.reduce((sum, cell) => sum + cell.length, 0) > longest) return;
    const numbers = numbersOf(scan);
    let groups = 0;
    let at = 0;
    for (const cell of cells)
      for (let index = 0; index < cell.length; index++, at++) {
        codes[at] = cell.charCodeAt(index);
        ends[at] = -2;
        if (!isDigit(codes[at]!)) continue;
        ends[at] = isDigit(cell.charCodeAt(index + 1)) ? -1 : (numbers[groups++] ?? -1);
      }
    // Digits that are no number of their own (run together, or in a remark): no template.
    if (groups === numbers.length) for (const cell of cells) lengths.push(cell.length);
  };
  const fill = (scan: Scan, cells: readonly string[]): boolean => {
    if (lengths.length === 0 || cells.length !== lengths.length) return false;
    let at = 0;
    for (let column = 0; column < cells.length; column++) {
      const cell = cells[column]!;
      if (cell.length !== lengths[column]) return false;
      let value = 0;
      for (let index = 0; index < cell.length; index++, at++) {
        const code = cell.charCodeAt(index);
        const end = ends[at]!;
        if (end === -2) {
          if (code !== codes[at]) return false;
          continue;
        }
        if (!isDigit(code)) return false;
        value = value * 10 + (code - 48);
        if (end < 0) continue;
        scan.values[end] = value;
        value = 0;
      }
    }
    return true;
  };
  return { learn, fill, clear };
};
