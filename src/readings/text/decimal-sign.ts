import type { Delimiter, SampleRecord } from "./dialect.ts";
import type { DecimalSign } from "../cells/numbers.ts";

/** The decimal sign, or the number that can be read either way. */
export type DecimalFinding =
  | { readonly kind: "decimal"; readonly decimal: DecimalSign }
  | { readonly kind: "undecidable"; readonly line: number; readonly found: string };

const unit =
  "\\s*(?:[\\u00b0\\u00ba\\ufffd\\u2103\\u2109?]?\\s*(?:deg\\.?\\s*)?(?:c|f|celsius|fahrenheit)?)";
const comma = new RegExp(`^[-+\\u2212]?(?:\\d{1,3}(?:[.' ]\\d{3})*|\\d+)?,\\d+${unit}$`, "iu");
const point = new RegExp(`^[-+\\u2212]?(?:\\d{1,3}(?:[,' ]\\d{3})*|\\d+)?\\.\\d+${unit}$`, "iu");
/** One comma before exactly three digits, which groups thousands as well. */
const either = new RegExp(`^[-+\\u2212]?[1-9]\\d{0,2},\\d{3}${unit}$`, "iu");

interface Signs {
  commas: number;
  clearCommas: number;
  points: number;
  firstEither: { line: number; found: string } | null;
}

const countSigns = (rows: readonly SampleRecord[], columns: ReadonlySet<number>): Signs => {
  const signs: Signs = { commas: 0, clearCommas: 0, points: 0, firstEither: null };
  for (const { cells, line } of rows) {
    for (const [at, cell] of cells.entries()) {
      const text = cell.trim();
      if (!columns.has(at) || text === "") continue;
      if (point.test(text)) signs.points += 1;
      else if (comma.test(text)) {
        signs.commas += 1;
        if (either.test(text)) signs.firstEither ??= { line, found: text };
        else signs.clearCommas += 1;
      }
    }
  }
  return signs;
};

/**
 * The decimal sign of a file from the cells of the columns that hold numbers.
 * Between semicolons or tabs a comma is a decimal sign. Between commas (quoted
 * numbers) it is one unless every such number has exactly three digits after
 * it: then "1,234" may be thousands, and the person is asked.
 */
export const findDecimal = (
  rows: readonly SampleRecord[],
  columns: ReadonlySet<number>,
  delimiter: Delimiter,
  said: DecimalSign | undefined,
): DecimalFinding => {
  if (said !== undefined) return { kind: "decimal", decimal: said };
  const { commas, clearCommas, points, firstEither } = countSigns(rows, columns);
  if (commas === 0 || points > commas) return { kind: "decimal", decimal: "." };
  if (delimiter === "," && clearCommas === 0 && firstEither !== null)
    return { kind: "undecidable", ...firstEither };
  return { kind: "decimal", decimal: "," };
};
