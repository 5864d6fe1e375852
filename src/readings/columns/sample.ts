import { findDelimiter, sampleRecords } from "../text/dialect.ts";
import type { Delimiter, SampleRecord } from "../text/dialect.ts";
import { headingUnit } from "./heading-unit.ts";
import { headingKind } from "./headings.ts";
import type { HeadingKind } from "./headings.ts";
import { mayMeanKelvin } from "./kelvin.ts";
import { findLayout } from "./layout.ts";
import type { Layout } from "./layout.ts";
import { speakingNames } from "./named-columns.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ReadingOptions } from "../readings-file.ts";
import { isTextRow } from "../rows/row-text.ts";
import { findSplitDecimals, joinDecimals } from "../text/split-decimals.ts";
import type { SplitDecimals } from "../text/split-decimals.ts";

/** Rows looked at to decide; spread over the sample, so that warm-up and hold are both seen. */
const sampledRows = 400;

/** Rows of a block. */
const together = 32;

const spreadRows = (rows: readonly SampleRecord[]): SampleRecord[] => {
  const stride = Math.max(1, Math.floor(rows.length / sampledRows));
  if (stride === 1) return [...rows];
  // Neighbours stay together (steps of row numbers and of times are looked at).
  return rows.filter((_, at) => at % (stride * together) < together);
};
/** All of the first records, where the heading is; of the later ones blocks. */
const isKept = (at: number): boolean => at < 1000 || at % (4 * together) < together;

/** Heading and unit below it together: "Sensor 1 [degC]". */
export const fullHeading = (layout: Layout, column: number): string => {
  const heading = layout.headings?.[column] ?? "";
  const unit = (layout.units[column] ?? "").replaceAll(/[()[\]]/gu, "");
  return unit === "" || headingUnit(heading) !== null ? heading : `${heading} [${unit}]`;
};

/** The first part of a file, cut into rows from which the rest is decided. */
export interface Sample {
  readonly name: string;
  readonly options: ReadingOptions;
  readonly delimiter: Delimiter;
  readonly layout: Layout;
  readonly split: SplitDecimals | null;
  readonly rows: readonly SampleRecord[];
  readonly columnCount: number;
  readonly firstLine: number;
  readonly names: readonly string[];
  readonly textRowsUsual: boolean;
}

/** Names as they stand in a problem's sentence. */
export const listed = (names: readonly string[]): string => {
  const shown = names.slice(0, 12).map((name) => `"${name.slice(0, 60)}"`);
  return names.length > 12 ? `${shown.join(", ")} and more` : shown.join(", ");
};

/** There is no column of temperatures. */
export const noTemperature = (name: string, line: number, names: readonly string[]) =>
  failed("no-temperature-column", { file: name, line, columns: listed(names) });

const isHeading = ({ cells }: SampleRecord): boolean =>
  cells.some((cell) => headingKind(cell) === "temperature") &&
  cells.some((cell) => /^(?:time|date)$/u.test(headingKind(cell)));

/** A heading without rows below is a file without readings; anything else has no temperatures. */
const noRows = (name: string, records: readonly SampleRecord[]) => {
  if (records.some(isHeading)) return failed("too-few-readings", { file: name, found: 0 });
  return noTemperature(name, records[0]?.line ?? 1, records[0]?.cells ?? []);
};

/** Reads layout and rows of the sample; a numeral cut by its own decimal comma is joined or asked about. */
export const takeSample = (
  name: string,
  text: string,
  options: ReadingOptions,
): Outcome<Sample> => {
  const delimiter = findDelimiter(text) ?? ",";
  const records = sampleRecords(text, delimiter, isKept);
  const layout = findLayout(records);
  if (layout === null) return noRows(name, records);
  const written = records.slice(layout.firstRow);
  const spread = spreadRows(written);
  const split = findSplitDecimals(spread, layout.headings, delimiter);
  const firstLine = layout.headerLine ?? written[0]?.line ?? 1;
  if (split !== null && options.decimal === undefined) {
    const cut = written.find(({ cells }) => cells.length === split.width);
    const found = (cut?.cells ?? []).slice(-2).join(",");
    return failed("decimal-undecidable", { file: name, line: cut?.line ?? firstLine, found });
  }
  const joins = split !== null && options.decimal === "," ? split : null;
  const readings = spread.filter(({ cells }) => !isTextRow(cells));
  const textRowsUsual = readings.length < spread.length / 2;
  const rows = (textRowsUsual ? spread : readings).map(({ cells, line }) => ({
    cells: joins === null ? cells : joinDecimals(cells, joins),
    line,
  }));
  const columnCount = joins === null ? layout.columnCount : joins.width - joins.numbers;
  const names = speakingNames(layout.headings, columnCount);
  const shape = { delimiter, layout, split: joins, rows, columnCount };
  return done({ name, options, ...shape, firstLine, names, textRowsUsual });
};

/** What the headings say, with the units line: a column in another unit is no temperature. */
export const kindsOf = ({ layout, columnCount }: Sample): HeadingKind[] =>
  Array.from({ length: columnCount }, (_, column) => {
    const unit = layout.units[column] ?? "";
    const kind = headingKind(fullHeading(layout, column));
    const isOtherUnit =
      unit !== "" &&
      headingUnit(unit) === null &&
      !mayMeanKelvin(unit) &&
      !/^[-[(]?-?[)\]]?$/u.test(unit);
    return isOtherUnit && kind !== "time" && kind !== "date" ? "other" : kind;
  });
