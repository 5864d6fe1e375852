import { halfEnd, isDigit, isLetter, isMark, isSpace } from "./characters.ts";
import { wordOf } from "./words.ts";

/**
 * One stamp cut into tokens. `kinds[i]` is the character code of a letter:
 * numbers by their digits (d one or two, t three, Y four, H six, B eight,
 * x any other), M month, a half of the day, D h m s units, T, Z, z zones;
 * - / . , : + and space stand for themselves. The letters together are the
 * stamp's shape, and stamps of one shape are read alike.
 */
export interface Scan {
  length: number;
  /** No token is of another kind than the one in its place in the scan before. */
  sameKinds: boolean;
  readonly kinds: Uint8Array;
  readonly values: Float64Array;
  readonly digits: Uint8Array;
}

const capacity = 32;

export const createScan = (): Scan => ({
  length: 0,
  sameKinds: false,
  kinds: new Uint8Array(capacity),
  values: new Float64Array(capacity),
  digits: new Uint8Array(capacity),
});

const code = (letter: string): number => letter.charCodeAt(0);
const SPACE = code(" ");
const DASH = code("-");
const HALF = code("a");
const TEE = code("T");
const ZULU = code("Z");
const other = code("x");
const byDigits = [
  other,
  code("d"),
  code("d"),
  code("t"),
  code("Y"),
  other,
  code("H"),
  other,
  code("B"),
];

const put = (scan: Scan, kind: number, value: number, digits: number): boolean => {
  if (scan.length === capacity) return false;
  const next = scan.length++;
  if (scan.kinds[next] !== kind) {
    scan.kinds[next] = kind;
    scan.sameKinds = false;
  }
  scan.values[next] = value;
  scan.digits[next] = digits;
  return true;
};

/** The T between date and time and the Z of UTC, which stand alone: their end, or -1. */
const letterEnd = (scan: Scan, cell: string, at: number): number => {
  const letter = cell.charCodeAt(at);
  if ((letter !== TEE && letter !== ZULU) || isLetter(cell.charCodeAt(at + 1))) return -1;
  return put(scan, letter, 0, 0) ? at + 1 : -1;
};

/** Reads the word at `at`; where it ends, or -1 where it means nothing here. */
const word = (scan: Scan, cell: string, at: number): number => {
  const letter = letterEnd(scan, cell, at);
  if (letter > 0) return letter;
  const half = halfEnd(cell, at);
  if (half > 0) return put(scan, HALF, (cell.charCodeAt(at) | 32) === 112 ? 12 : 0, 0) ? half : -1;
  let end = at + 1;
  while (end < cell.length && isLetter(cell.charCodeAt(end))) end++;
  const found = wordOf(cell.slice(at, end));
  if (found === null) return -1;
  if (cell[end] === "." && found.kind.length === 1 && !"TZ".includes(found.kind)) end++;
  if (found.kind !== "skip") return put(scan, code(found.kind), found.value, 0) ? end : -1;
  while (cell[end] === "." || cell[end] === "," || cell[end] === "-") end++;
  return end;
};

const trimEnd = (scan: Scan): void => {
  while (scan.length > 0 && scan.kinds[scan.length - 1] === SPACE) scan.length--;
};

const space = (scan: Scan): boolean =>
  scan.length === 0 || scan.kinds[scan.length - 1] === SPACE || put(scan, SPACE, 0, 0);

/** 20261125223005 or 202611252230: a date and a time in one number. */
const runTogether = (scan: Scan, value: number, digits: number): boolean => {
  const clock = digits === 14 ? 1e6 : 1e4;
  put(scan, byDigits[8]!, Math.floor(value / clock), 8);
  put(scan, SPACE, 0, 0);
  return put(scan, byDigits[digits - 8]!, value % clock, digits - 8);
};

/** Reads the number at `at`; where it ends, or -1. */
const number = (scan: Scan, cell: string, at: number): number => {
  let value = 0;
  let end = at;
  for (let c = cell.charCodeAt(end); c >= 48 && c <= 57; c = cell.charCodeAt(++end))
    value = value * 10 + (c - 48);
  const digits = end - at;
  if (scan.length === 0 && (digits === 12 || digits === 14))
    return runTogether(scan, value, digits) ? end : -1;
  return put(scan, byDigits[digits] ?? other, value, digits) ? end : -1;
};

const scanCell = (scan: Scan, cell: string): boolean => {
  let at = 0;
  while (at < cell.length) {
    const c = cell.charCodeAt(at);
    // A zone's name in brackets at the end says nothing that its offset does not.
    if (c === 40 && scan.length > 0) return true;
    if (isDigit(c)) at = number(scan, cell, at);
    else if (isSpace(c)) at = space(scan) ? at + 1 : -1;
    else if (isMark(c)) at = put(scan, c, 0, 0) ? at + 1 : -1;
    else if (c === 0x2212) at = put(scan, DASH, 0, 0) ? at + 1 : -1;
    else at = isLetter(c) ? word(scan, cell, at) : -1;
    if (at < 0) return false;
  }
  return true;
};

/** Cuts the cells of one row, taken as one text with spaces between; false: no stamp. */
export const scanStamp = (scan: Scan, cells: readonly string[]): boolean => {
  scan.length = 0;
  scan.sameKinds = true;
  for (const cell of cells) if (!scanCell(scan, cell) || !space(scan)) return false;
  trimEnd(scan);
  return scan.length > 0;
};

/** The letters of the shape. */
export const shapeOf = (scan: Scan): string =>
  String.fromCharCode(...scan.kinds.subarray(0, scan.length));
