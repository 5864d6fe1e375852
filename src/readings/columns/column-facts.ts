import type { FileUnit } from "../readings-file.ts";
import { cellKind } from "../cells/cell-kind.ts";
import type { SampleRecord } from "../text/dialect.ts";
import { readCellNumber } from "../cells/numbers.ts";
import type { DecimalSign } from "../cells/numbers.ts";

/** What the sample's cells of one column show. */
export interface ColumnFacts {
  readonly index: number;
  /** One for each sampled row; NaN where the cell is no number. */
  readonly values: readonly number[];
  readonly numbers: number;
  readonly times: number;
  readonly flags: number;
  readonly filled: number;
  /** Share of the numbers that carry a unit of temperature, and the first such unit. */
  readonly unit: FileUnit | null;
  readonly unitShare: number;
  /** Every number is written without decimals. */
  readonly whole: boolean;
  readonly distinct: number;
  readonly median: number;
  /** Most decimals written in a cell. */
  readonly decimals: number;
}

const decimalsOf = (cell: string): number => /[.,](\d+)\D*$/u.exec(cell)?.[1]?.length ?? 0;

const medianOf = (values: readonly number[]): number => {
  const sorted = values.filter((value) => !Number.isNaN(value)).toSorted((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
};

/** Facts of one column over the sampled rows. */
export const columnFacts = (
  rows: readonly SampleRecord[],
  index: number,
  decimal: DecimalSign,
): ColumnFacts => {
  const cells = rows.map(({ cells: row }) => (row[index] ?? "").trim());
  const read = cells.map((cell) => readCellNumber(cell, decimal));
  const kinds = cells.map(cellKind);
  const values = read.map((item) => item?.value ?? Number.NaN);
  const numeric = cells.filter((_, at) => read[at] !== null);
  const units = read.flatMap((item) => (item?.unit ? [item.unit] : []));
  const decimals = numeric.reduce((most, cell) => Math.max(most, decimalsOf(cell)), 0);
  return {
    index,
    values,
    numbers: numeric.length,
    times: kinds.filter((kind) => kind === "time").length,
    flags: kinds.filter((kind) => kind === "flag").length,
    filled: kinds.filter((kind) => kind !== "empty").length,
    unit: units[0] ?? null,
    unitShare: numeric.length === 0 ? 0 : units.length / numeric.length,
    whole: decimals === 0,
    distinct: new Set(values.filter((value) => !Number.isNaN(value))).size,
    median: medianOf(values),
    decimals,
  };
};

/** The values that stand in a row one after another, gaps left out. */
const present = (facts: ColumnFacts): number[] =>
  facts.values.filter((value) => !Number.isNaN(value));

/** Share of neighbouring values that do not fall. */
export const risingShare = (facts: ColumnFacts): number => {
  const values = present(facts);
  if (values.length < 2) return 0;
  let rising = 0;
  for (let at = 1; at < values.length; at += 1)
    if ((values[at] ?? 0) > (values[at - 1] ?? 0)) rising += 1;
  return rising / (values.length - 1);
};

/** Row numbers: whole and rising in one and the same step nearly everywhere. */
export const isIndex = (facts: ColumnFacts): boolean => {
  const values = present(facts);
  if (!facts.whole || values.length < 3) return false;
  const steps = values.slice(1).map((value, at) => value - (values[at] ?? 0));
  const first = steps[0] ?? 0;
  return first > 0 && steps.filter((step) => step === first).length >= 0.9 * steps.length;
};

/** Few whole values, as identities, flags and levels have. */
export const isFlagLike = (facts: ColumnFacts): boolean =>
  facts.whole &&
  facts.numbers >= 6 &&
  (facts.distinct <= 2 || (facts.distinct <= 4 && facts.median < 10));
