import type { FileUnit } from "../readings-file.ts";
import { growableBytes, growableFloats } from "../rows/growable.ts";
import type { GrowableBytes, GrowableFloats } from "../rows/growable.ts";
import { plainNumber, readCellNumber } from "./numbers.ts";
import type { DecimalSign } from "./numbers.ts";
import type { ProbeColumn } from "../columns/probe-columns.ts";
import { codeOf, good } from "../rows/tally.ts";
import { isTextFlag } from "./text-flags.ts";
import { unitCellUnit } from "../columns/written-unit.ts";

/** The cells of one probe, one for each row with a time; NaN and a reason where there is no number. */
export interface ProbeCells {
  readonly values: GrowableFloats;
  readonly reasons: GrowableBytes;
}

const missing = codeOf("missing");
export const unparseable = codeOf("unparseable-temperature");
export const textFlag = codeOf("text-flag");

const faultyCell = (cell: string): number => {
  if (cell.trim() === "") return missing;
  return isTextFlag(cell) ? textFlag : unparseable;
};

/** Reads the cells of one temperature column. */
export interface ProbeReader {
  /** Reads one cell of a row and keeps it; gives its reason. */
  read(cells: readonly string[], line: number): number;
  /** Keeps the cell as one that cannot be read. */
  refuse(): void;
  /** The same as `read` without keeping it. */
  peek(cells: readonly string[]): number;
  readonly cells: ProbeCells;
}

/** Told of each cell that names another unit than its column. */
export type NoteUnit = (line: number, found: string) => void;

/** The reader of one column: its numbers, and a reason for each cell that is none. */
export const createProbeReader = (
  { column, unit, unitColumn }: ProbeColumn,
  decimal: DecimalSign,
  noteUnit: NoteUnit,
): ProbeReader => {
  const cells: ProbeCells = { values: growableFloats(), reasons: growableBytes() };
  let expected: FileUnit | null = unit;
  const check = (found: FileUnit | null, line: number, text: string): void => {
    if (found === null) return;
    expected ??= found;
    if (found !== expected) noteUnit(line, text);
  };
  const keep = (value: number, reason: number): number => {
    cells.values.push(value);
    cells.reasons.push(reason);
    return reason;
  };
  return {
    cells,
    refuse: () => {
      keep(Number.NaN, unparseable);
    },
    peek: (row) => {
      const cell = row[column] ?? "";
      return readCellNumber(cell, decimal) === null ? faultyCell(cell) : good;
    },
    read(row, line) {
      const cell = row[column] ?? "";
      if (unitColumn !== null)
        check(unitCellUnit(row[unitColumn] ?? ""), line, row[unitColumn] ?? "");
      const plain = plainNumber(cell, decimal);
      if (!Number.isNaN(plain)) return keep(plain, good);
      const found = readCellNumber(cell, decimal);
      if (found === null) return keep(Number.NaN, faultyCell(cell));
      check(found.unit, line, cell);
      return keep(found.value, good);
    },
  };
};
