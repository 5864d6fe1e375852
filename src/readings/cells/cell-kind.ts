import { headingUnit, withoutUnit } from "../columns/heading-unit.ts";
import { plainNumber, readCellNumber } from "./numbers.ts";
import { isTextFlag } from "./text-flags.ts";

/** What a cell looks like by itself: nothing, a number, a date or clock, a flag for a failed sensor, or words. */
export type CellKind = "empty" | "number" | "time" | "flag" | "words";

const month =
  "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|mai|mae|okt|dez|avr|juin|juil|aou|fev|ene|abr|ago|dic|gen|mag|giu|lug|set|ott|maa|kes|hei|elo|syy|lok|mrt|mei)\\p{L}*\\.?";
const clock =
  "\\d{1,2}(?:[:.]\\d{2}){1,3}(?:[.,]\\d+)?|\\d{1,3}:\\d{2}(?::\\d{2})?(?:[.,]\\d+)?|\\d{1,2}\\s?h\\s?\\d{2}";
const half = "\\s*[ap]\\.?\\s?m\\.?";
const clockAlone = new RegExp(
  `^(?:\\d+\\s?d(?:ays?)?[\\s,]*)?(?:\\d{1,4}:\\d{2}(?::\\d{2})?(?:[.,]\\d+)?|\\d{1,2}h\\d{2}(?:m(?:\\d{2}s?)?)?|\\d{1,2}\\.\\d{2}\\.\\d{2})(?:${half})?$|^\\d{1,2}${half}$`,
  "iu",
);
const numericDate = "\\d{4}[-/.]\\d{1,2}[-/.]\\d{1,2}|\\d{1,2}[-/.]\\d{1,2}[-/.](?:\\d{4}|\\d{2})";
const namedDate = `\\d{1,2}(?:st|nd|rd|th)?\\.?[-/\\s]*${month}[-/\\s,]*(?:\\d{4}|\\d{2})?|${month}[-/\\s]*\\d{1,2}(?:st|nd|rd|th)?[-/\\s,]*(?:\\d{4})?`;
/** Without a year; only beside a clock, or with a mark that no number has. */
const yearless = "\\d{1,2}[-/]\\d{1,2}|\\d{1,2}\\.\\s?\\d{1,2}\\.";
const weekday = "(?:\\p{L}{2,10}\\.?,?\\s+)?";
const dateMaybeClock = new RegExp(
  `^${weekday}(?:${numericDate}|${namedDate})(?:[tT_,\\s-]+(?:um\\s+|at\\s+|kl\\.?\\s+)?(?:${clock})(?:${half})?.{0,24})?$`,
  "iu",
);
const yearlessAndClock = new RegExp(
  `^(?:${yearless}|\\d{1,2}\\.\\d{1,2})[tT,\\s]+\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?(?:${half})?$`,
  "iu",
);
const compactStamp = /^\d{8}[T_ ]\d{4,6}(?:Z|[+-]\d{2}:?\d{2})?$/u;

/** True for a clock time by itself, such as 22:30, 10:30:15 PM, 22h30. */
export const isClock = (cell: string): boolean => clockAlone.test(cell.trim());

const dateAlone = new RegExp(`^${weekday}(?:${numericDate}|${namedDate}|${yearless})$`, "iu");

/** True for a date without a clock. */
export const isDateOnly = (cell: string): boolean => dateAlone.test(cell.trim());

/** True for a cell that holds nothing but AM or PM. */
export const isHalfDay = (cell: string): boolean => /^[ap]\.?\s?m\.?$/iu.test(cell.trim());

/** True where a cell has the look of a date, a clock or both; `clock.ts` reads them. */
export const looksLikeTime = (cell: string): boolean => {
  const text = cell.trim();
  return (
    /\d/u.test(text) &&
    text.length < 64 &&
    (clockAlone.test(text) ||
      dateMaybeClock.test(text) ||
      yearlessAndClock.test(text) ||
      compactStamp.test(text))
  );
};

/** The kind of one cell; numbers are taken with either decimal sign and with a unit of temperature. */
export const cellKind = (cell: string): CellKind => {
  const text = cell.trim();
  if (text === "") return "empty";
  if (!Number.isNaN(plainNumber(text, ","))) return "number";
  if (readCellNumber(text, ".") !== null || readCellNumber(text, ",") !== null) return "number";
  if (looksLikeTime(text)) return "time";
  if (isTextFlag(text)) return "flag";
  return "words";
};

/** Units and patterns that stand in a line under the heading. */
const unitWords =
  /^[([]?(?:m?[vaw]|kwh?|k|%|%\s?rh|rh|[hkm]?pa|m?bar|psi|ppm|ppb|lu?x|dbm?|hz|ohm|ph|rpm|k?g|m?l|m|mm|s|secs?|seconds?|ms|mins?|minutes?|h|hrs?|hours?|utc|gmt|#|-+|none|hh:mm(?::ss)?|[ymdhs]{1,4}(?:[-/.:t ]+[ymdhs]{1,4})+)[)\]]?$/iu;

/** True for a cell of a units line: empty, a unit, or how times are written. */
export const isUnitCell = (cell: string): boolean => {
  const text = cell.trim();
  if (text === "" || unitWords.test(text)) return true;
  return (
    headingUnit(text) !== null && withoutUnit(`x (${text.replaceAll(/[()[\]]/gu, "")})`) === "x"
  );
};
