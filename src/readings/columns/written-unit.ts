import type { ColumnFacts } from "./column-facts.ts";
import type { SampleRecord } from "../text/dialect.ts";
import { headingUnit } from "./heading-unit.ts";
import { isKelvin } from "./kelvin.ts";
import type { FileUnit } from "../readings-file.ts";

/** A unit of temperature as the file writes it, and the column of units, if that is where it stands. */
export interface WrittenUnit {
  readonly unit: FileUnit | null;
  readonly unitColumn: number | null;
}

const unitCell =
  /^(?:k|kelvin|[\u00b0\u00ba\u02da\ufffd?]?\s*[cf]|deg(?:rees?|\.)?\s*[cf]|\u2103|\u2109|celsius|fahrenheit)$/iu;

/** The unit a cell of a units column names, null where it names none. */
export const unitCellUnit = (cell: string): FileUnit | null => {
  const text = cell.trim();
  if (/^k(?:elvin)?$/iu.test(text)) return "K";
  return unitCell.test(text) ? headingUnit(text.toUpperCase()) : null;
};

/** Columns in which nearly every cell is a unit of temperature. */
export const findUnitColumns = (rows: readonly SampleRecord[], columnCount: number): number[] =>
  Array.from({ length: columnCount }, (_, at) => at).filter((at) => {
    const filled = rows.filter(({ cells }) => (cells[at] ?? "").trim() !== "");
    const units = filled.filter(({ cells }) => unitCellUnit(cells[at] ?? "") !== null);
    return units.length > 0 && units.length >= 0.9 * filled.length;
  });

const firstUnitIn = (rows: readonly SampleRecord[], column: number): FileUnit | null => {
  for (const { cells } of rows) {
    const unit = unitCellUnit(cells[column] ?? "");
    if (unit !== null) return unit;
  }
  return null;
};

/**
 * The unit written for one temperature column: in its heading or the units
 * line under it, in its cells, or in a column of units (the one to its right,
 * else the only one).
 */
export const writtenUnit = (
  facts: ColumnFacts,
  heading: string,
  unitColumns: readonly number[],
  rows: readonly SampleRecord[],
): WrittenUnit => {
  const beside = unitColumns.find((column) => column > facts.index);
  const unitColumn = beside ?? unitColumns[0] ?? null;
  if (unitColumn !== null) return { unit: firstUnitIn(rows, unitColumn), unitColumn };
  const kelvin = isKelvin(heading, facts.median) ? "K" : null;
  return { unit: headingUnit(heading) ?? kelvin ?? facts.unit, unitColumn: null };
};

const saysUnit = /(?:unit|einheit|unite|unidad|unita|yksikko|enhet|eenheid|scale|skala|temp)/iu;

/** A unit that the preamble states ("Temperature unit;degF"), where it states only one. */
export const preambleUnit = (preamble: readonly SampleRecord[]): FileUnit | null => {
  const units = new Set<FileUnit>();
  for (const { cells } of preamble) {
    const text = cells.map((cell) => cell.normalize("NFD").replaceAll(/\p{M}/gu, "")).join(" ");
    if (!saysUnit.test(text)) continue;
    for (const part of cells.flatMap((cell) => cell.split(/[:=]/u))) {
      const unit =
        unitCellUnit(part) ??
        (/[\u00b0\u00ba\ufffd]\s*[cf](?![a-z])/iu.test(part) ? headingUnit(part) : null);
      if (unit !== null) units.add(unit);
    }
  }
  const [only, second] = [...units];
  return second === undefined ? (only ?? null) : null;
};
