import { cellKind } from "../cells/cell-kind.ts";
import { eachRecord } from "./records.ts";
import { createRecordSplitter } from "./record-splitter.ts";

/** " " stands for runs of blanks, two of them for runs of two or more. */
export type Delimiter = "," | ";" | "\t" | "|" | " " | "  ";

/** One record of the sample and the line it begins in. */
export interface SampleRecord {
  readonly cells: readonly string[];
  readonly line: number;
}

/** The records of a text split by one delimiter; `keep` says which, by their number from 0. */
export const sampleRecords = (
  text: string,
  delimiter: Delimiter,
  keep: (at: number) => boolean = () => true,
): SampleRecord[] => {
  const splitter = createRecordSplitter(delimiter);
  const records: SampleRecord[] = [];
  let at = 0;
  eachRecord([splitter.push(text), splitter.end()], delimiter, (cells, line) => {
    if (keep(at)) records.push({ cells, line });
    at += 1;
  });
  return records;
};

/** Order in which equally good delimiters are preferred: a comma is a decimal sign as well. */
export const delimiters: readonly Delimiter[] = ["\t", ";", "|", ","];

/** A time and a number, or numbers set far apart, that a decimal comma has not parted. */
const twoInOne = /:\d{2} +[-\d]\d*$|\d {2,}[-\d]/u;
/** Cells that are whole: a reading, a time, nothing, or words without another delimiter in them. */
const isWhole = (cell: string, delimiter: Delimiter): boolean => {
  if (cellKind(cell) !== "words") return true;
  if (twoInOne.test(cell)) return false;
  return !delimiters.some((sign) => sign !== delimiter && cell.includes(sign));
};

const widthOf = (cells: readonly string[]): number => {
  let width = cells.length;
  while (width > 0 && (cells[width - 1] ?? "").trim() === "") width -= 1;
  return width;
};

/** The commonest width above one with its count, among the records. */
const commonestWidth = (records: readonly SampleRecord[]): { width: number; count: number } => {
  const counts = new Map<number, number>();
  for (const { cells } of records) {
    const width = cells.length;
    if (width > 1) counts.set(width, (counts.get(width) ?? 0) + 1);
  }
  let best = { width: 1, count: 0 };
  for (const [width, count] of counts) if (count > best.count) best = { width, count };
  return best;
};

/**
 * How well a delimiter cuts the sample: the share of records of the commonest
 * width, times the share of whole cells in them, and a little for records that
 * hold a reading and a time.
 */
export const delimiterScore = (records: readonly SampleRecord[], delimiter: Delimiter): number => {
  const { width, count } = commonestWidth(records);
  if (width < 2) return 0;
  const common = records.filter(({ cells }) => cells.length === width);
  let whole = 0;
  let readings = 0;
  for (const { cells } of common) {
    whole += cells.filter((cell) => isWhole(cell, delimiter)).length / width;
    const kinds = cells.map(cellKind);
    if (kinds.includes("number")) readings += 1;
  }
  return ((whole / count) ** 2 * (count + readings)) / (2 * records.length);
};

const sampleLines = 150;

/** The first lines, and as many from the end of the sample, where a preamble has long passed. */
const thinned = (text: string): string => {
  const lines = text.split(/\r\n?|\n/u);
  if (lines.length <= 2 * sampleLines) return text;
  return [...lines.slice(0, sampleLines), ...lines.slice(-sampleLines)].join("\n");
};

const commaNumber = /^\s*[-+\u2212]?\d{1,3},\d{1,6}\s*(?:(?:[\u00b0\u00ba\ufffd]\s*)?[CF])?\s*$/iu;

/**
 * True for one column of numbers with decimal commas under a heading of one
 * cell ("Temperatur", "41,2"), or with a unit after each number: what looks
 * like two columns between commas is one.
 */
const isOneColumn = (sample: string): boolean => {
  const lines = sample.split(/\r\n?|\n/u).filter((line) => line.trim() !== "");
  const first = lines.findIndex((line) => commaNumber.test(line));
  const numbers = lines.filter((line) => commaNumber.test(line));
  if (
    first === -1 ||
    numbers.length < 0.5 * lines.length ||
    numbers.length < lines.length - first - 12
  )
    return false;
  const above = lines[first - 1] ?? ",";
  return !above.includes(",") || numbers.every((line) => /[CF]\s*$/iu.test(line));
};

/** Two cells that are a time or a number: blanks part words as well. */
const holdsReadings = ({ cells }: SampleRecord): boolean =>
  cells.filter((cell) => /^(?:time|number)$/u.test(cellKind(cell))).length > 1;

/** Runs of blanks, where they cut the sample better than any sign does. */
const findBlanks = (sample: string, leastScore: number): Delimiter | null => {
  for (const blanks of ["  ", " "] as const) {
    const records = sampleRecords(sample, blanks);
    const rows = records.filter(holdsReadings).length;
    if (rows >= 0.5 * records.length && delimiterScore(records, blanks) > leastScore * 1.0001)
      return blanks;
  }
  return null;
};

/**
 * The delimiter of a text, by how consistently it cuts the sample's lines into
 * whole cells, never by the first line alone; null where none does (one column).
 */
export const findDelimiter = (text: string): Delimiter | null => {
  let best: Delimiter | null = null;
  let bestScore = 0.05;
  const sample = thinned(text);
  if (isOneColumn(sample)) return ";";
  for (const delimiter of delimiters) {
    if (!text.includes(delimiter)) continue;
    const score = delimiterScore(sampleRecords(sample, delimiter), delimiter);
    if (score > bestScore * 1.0001) {
      best = delimiter;
      bestScore = score;
    }
  }
  return findBlanks(sample, bestScore) ?? best;
};

export { widthOf };
