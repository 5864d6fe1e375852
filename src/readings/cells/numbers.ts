import type { FileUnit } from "../readings-file.ts";

/** The sign that parts whole from decimal digits. */
export type DecimalSign = "." | ",";
/** A number read from a cell, with the unit written beside it, if any. */
export interface CellNumber {
  readonly value: number;
  readonly unit: FileUnit | null;
}

/**
 * Number, then perhaps a degree sign, a word for it and C, F or K. The replacement
 * character and "?" stand where an export lost its degree sign.
 */
const numberWithUnit =
  /^([-+\u2212]?(?:\d[\d.,' \u00a0\u202f]*|[.,]\d+)(?:e[-+]?\d+)?)\s*(?:(\u2103)|(\u2109)|[\u00b0\u00ba\u02da\ufffd?*]?\s*(?:deg(?:rees?|\.)?|grad)?\s*(celsius|fahrenheit|kelvin|c|f|k)|[\u00b0\u00ba\u02da])?$/iu;

const unitOf = (match: RegExpExecArray): FileUnit | null => {
  if (match[2] !== undefined) return "degC";
  if (match[3] !== undefined) return "degF";
  const letter = match[4]?.[0]?.toLowerCase();
  if (letter === undefined) return null;
  if (letter === "k") return "K";
  return letter === "c" ? "degC" : "degF";
};

const grouped = {
  ".": /^[-+]?\d{1,3}(?:[,' ]\d{3})+(?:\.\d+)?$/u,
  ",": /^[-+]?\d{1,3}(?:[.' ]\d{3})+(?:,\d+)?$/u,
};

/** The digits of a cell as a number; NaN where they are none. */
const digitsToNumber = (text: string, decimal: DecimalSign): number => {
  const digits = text
    .replace("\u2212", "-")
    .replaceAll(/[\u00a0\u202f]/gu, " ")
    .trim();
  if (decimal === ",") {
    if (digits.includes(",")) {
      const plain = grouped[","].test(digits) ? digits.replaceAll(/[.' ]/gu, "") : digits;
      return Number(plain.replace(",", "."));
    }
    return Number(digits);
  }
  return Number(grouped["."].test(digits) ? digits.replaceAll(/[,' ]/gu, "") : digits);
};

/** The number in a cell with its unit; null where the cell is no number. */
export const readCellNumber = (cell: string, decimal: DecimalSign): CellNumber | null => {
  const text = cell.trim();
  const plain = plainNumber(text, decimal);
  if (!Number.isNaN(plain)) return { value: plain, unit: null };
  const match = numberWithUnit.exec(text);
  if (match === null) return null;
  const value = digitsToNumber(match[1] ?? "", decimal);
  return Number.isFinite(value) ? { value, unit: unitOf(match) } : null;
};

const lowestPlain = 0x2b; // "+", "," "-" "." "/" and the digits follow
const nine = 0x39;

const comma = 0x2c;
const minus = 0x2d;
const point = 0x2e;
const zero = 0x30;
const powers = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

/**
 * "-12.34" and the like, up to 15 digits, else NaN. The digits as a whole number
 * and the power of ten are exact, so their quotient is the nearest number
 * (IEEE 754 division), the same as `Number` gives.
 */
const digitsAndSign = (cell: string, sign: number): number => {
  const { length } = cell;
  const start = cell.charCodeAt(0) === minus ? 1 : 0;
  if (length > 16 || length === start) return Number.NaN;
  let digits = 0;
  let signAt = -1;
  for (let at = start; at < length; at += 1) {
    const code = cell.charCodeAt(at);
    if (code >= zero && code <= nine) digits = digits * 10 + (code - zero);
    else if (code === sign && signAt < 0) signAt = at;
    else return Number.NaN;
  }
  if (length - start - (signAt < 0 ? 0 : 1) < 1 || digits > 1e15) return Number.NaN;
  const value = signAt < 0 ? digits : digits / powers[length - 1 - signAt]!;
  return start === 1 ? -value : value;
};

/**
 * The number in a cell that is nothing but a plain number, else NaN: the fast
 * way for millions of cells. `Number` would also take "", " ", "0x1f" and
 * "Infinity", which are no readings; the first two characters tell.
 */
export const plainNumber = (cell: string, decimal: DecimalSign): number => {
  const first = cell.charCodeAt(0);
  if (!(first >= lowestPlain && first <= nine) || cell.charCodeAt(1) > nine) return Number.NaN;
  const simple = digitsAndSign(cell, decimal === "," ? comma : point);
  if (!Number.isNaN(simple)) return simple;
  if (decimal === "," && cell.includes(",")) return Number(cell.replace(",", "."));
  return Number(cell);
};
