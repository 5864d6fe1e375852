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

/**
 * Cuts a block that holds no quote: then a record is a line and a cell what
 * stands between delimiters (RFC 4180, section 2), and csv-parse would only
 * take longer over it.
 */
const eachPlainRecord = (
  block: string,
  delimiter: string,
  visit: (cells: string[]) => void,
): void => {
  const next = (sign: string, from: number): number => {
    const found = block.indexOf(sign, from);
    return found === -1 ? block.length : found;
  };
  // Kept over lines without a delimiter, so that each place is searched once.
  let cut = next(delimiter, 0);
  for (let from = 0; from < block.length;) {
    const end = next("\n", from);
    const cells: string[] = [];
    while (cut < end) {
      cells.push(block.slice(from, cut));
      from = cut + 1;
      cut = next(delimiter, from);
    }
    cells.push(block.slice(from, end));
    visit(cells);
    from = end + 1;
  }
};

/** Columns set apart by runs of blanks, two or more where the delimiter is two. */
const eachSpacedRecord = (
  block: string,
  delimiter: string,
  visit: (cells: string[]) => void,
): void => {
  const gap = delimiter.length > 1 ? / {2,}/u : / +/u;
  const lines = block.split("\n");
  if (lines.at(-1) === "") lines.pop();
  for (const line of lines) visit(line.trim().split(gap));
};

/**
 * Splits blocks of whole records (from `record-splitter.ts`) into cells,
 * by csv-parse where there are quotes, and keeps count of the file's lines: a blank line comes back as a
 * record of one empty cell, a quoted line end counts as a line. csv-parse runs
 * on one block at a time, so memory stays that of a block.
 */
export const createRecordReader = (
  delimiter: string,
  visit: RecordVisitor,
  blank: (line: number) => void = ignoreBlank,
): ((block: string) => void) => {
  const options = {
    delimiter,
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
    if (delimiter.trim() === "" && delimiter !== "\t") {
      eachSpacedRecord(block, delimiter, take);
      return;
    }
    if (!block.includes('"')) {
      eachPlainRecord(block, delimiter, take);
      return;
    }
    for (const cells of parse(block, options) as string[][]) {
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
