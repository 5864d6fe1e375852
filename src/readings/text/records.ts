import { parse } from "csv-parse/sync";

/** The cells of one record, as written. */
export type Cells = readonly string[];
/** Called for each record that is not blank, with the 1-based line it begins in. */
export type RecordVisitor = (cells: Cells, line: number) => void;

const ignoreBlank = (): void => {};

const lineEnds = (cells: Cells): number => {
  let count = 0;
  for (const cell of cells) {
    for (let at = cell.indexOf("\n"); at !== -1; at = cell.indexOf("\n", at + 1)) count += 1;
  }
  return count;
};

/** Columns set apart by runs of blanks, two or more where the delimiter is two: each run becomes one sign that no text holds. */
const unitSeparator = "\u001f";
const separated = (block: string, delimiter: string): string => {
  const gap = delimiter.length > 1 ? / {2,}/gu : / +/gu;
  return block.replaceAll(/^ +| +$/gmu, "").replace(gap, unitSeparator);
};

const isBlanks = (delimiter: string): boolean => delimiter.trim() === "" && delimiter !== "\t";

/**
 * Splits blocks of whole records (from `record-splitter.ts`) into cells by
 * csv-parse and keeps count of the file's lines: a blank line comes back as a
 * record of one empty cell, a quoted line end counts as a line. csv-parse runs
 * on one block at a time, so memory stays that of a block.
 */
export const createRecordReader = (
  delimiter: string,
  visit: RecordVisitor,
  blank: (line: number) => void = ignoreBlank,
): ((block: string) => void) => {
  const spaced = isBlanks(delimiter);
  const options = {
    delimiter: spaced ? unitSeparator : delimiter,
    quote: spaced ? false : '"',
    relax_column_count: true,
    relax_quotes: true,
    record_delimiter: "\n",
  };
  // A line of nothing but tabs is blank to whoever sees it; one of semicolons is an empty row.
  const mostBlank = delimiter === "\t" ? Number.POSITIVE_INFINITY : 1;
  const isBlank = (cells: Cells): boolean =>
    (cells[0] ?? "").trim() === "" &&
    cells.length <= mostBlank &&
    cells.every((cell) => cell.trim() === "");
  let line = 1;
  const take = (cells: Cells): void => {
    if (isBlank(cells)) blank(line);
    else visit(cells, line);
    line += 1;
  };
  return (block) => {
    for (const cells of parse(
      spaced ? separated(block, delimiter) : block,
      options,
    ) as string[][]) {
      take(cells);
      line += lineEnds(cells);
    }
  };
};

/** Reads a text that is there as a whole. */
export const eachRecord = (
  blocks: Iterable<string>,
  delimiter: string,
  visit: RecordVisitor,
): void => {
  const read = createRecordReader(delimiter, visit);
  for (const block of blocks) if (block !== "") read(block);
};
