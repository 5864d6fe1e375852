import { cellKind, isUnitCell } from "../cells/cell-kind.ts";
import type { CellKind } from "../cells/cell-kind.ts";
import { widthOf } from "../text/dialect.ts";
import type { SampleRecord } from "../text/dialect.ts";
import { headingKind } from "./headings.ts";

/** Where the parts of a file stand. Indexes are into the sample's records. */
export interface Layout {
  /** The heading's cells, as many as there are columns; null where there is none. */
  readonly headings: readonly string[] | null;
  readonly headerLine: number | null;
  /** Units under the heading, "" where none. */
  readonly units: readonly string[];
  /** Index of the first record that is counted as a row read. */
  readonly firstRow: number;
  /** Records before the heading. */
  readonly preamble: readonly SampleRecord[];
  readonly columnCount: number;
}

interface Judged {
  readonly record: SampleRecord;
  readonly kinds: readonly CellKind[];
  readonly width: number;
}

const judge = (record: SampleRecord): Judged => ({
  record,
  kinds: record.cells.map(cellKind),
  width: widthOf(record.cells),
});

/** A record that can be a row of readings: a time and something beside it, or numbers from the first cell on. */
const isRowLike = ({ kinds, width }: Judged): boolean => {
  if (width === 0) return false;
  const values = kinds.filter((kind) => kind === "number" || kind === "flag").length;
  if (kinds.includes("time")) return values > 0 || kinds.includes("empty");
  const first = kinds.find((kind) => kind !== "empty");
  return first === "number" && kinds.filter((kind) => kind === "words").length <= width / 2;
};

const countTrue = (marks: readonly boolean[]): number => marks.filter(Boolean).length;

/** Where rows carry dates or clocks, numbers alone ("1;NTC;10442" in a preamble) are no rows. */
const rowLikes = (judged: readonly Judged[]): boolean[] => {
  const like = judged.map(isRowLike);
  const timed = judged.map(({ kinds }, at) => like[at] === true && kinds.includes("time"));
  return countTrue(timed) > 1 && countTrue(timed) >= 0.3 * countTrue(like) ? timed : like;
};

const commonest = (values: readonly number[]): number => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let best = 0;
  for (const [value, count] of counts) if (count > (counts.get(best) ?? 0)) best = value;
  return best;
};

/** Index of the first row of the readings: rows like it follow it. */
const findFirstRow = (judged: readonly Judged[]): number => {
  const rowLike = rowLikes(judged);
  const length = commonest(
    judged.filter((_, at) => rowLike[at]).map(({ record }) => record.cells.length),
  );
  const fits = (at: number): boolean =>
    rowLike[at] === true && Math.abs((judged[at]?.record.cells.length ?? 0) - length) <= 1;
  for (let at = 0; at < judged.length; at += 1) {
    if (!fits(at)) continue;
    const next = judged.slice(at + 1, at + 6);
    const following = next.filter((_, offset) => fits(at + 1 + offset)).length;
    if (following >= next.length / 3 || next.length === 0) return at;
  }
  return rowLike.indexOf(true);
};

const channelNumber = /^\d{1,2}$/u;

/** How many headings a record has that mean something, or -1 where it cannot be a heading at all. */
const headingScore = ({ record, kinds, width }: Judged, columns: number): number => {
  if (width === 0 || width > columns || (columns > 1 && width < Math.min(2, columns))) return -1;
  if (columns > 2 && width < columns / 2) return -1;
  let words = 0;
  for (const [at, cell] of record.cells.entries()) {
    const kind = kinds[at];
    if (kind === "words" || kind === "flag") words += 1;
    else if (kind === "time" || (kind === "number" && !channelNumber.test(cell.trim()))) return -1;
  }
  if (words === 0) return -1;
  const meant = record.cells.filter((cell) => headingKind(cell) !== "unknown").length;
  const keyAndValue = columns === 2 && /:\s*$/u.test(record.cells[0] ?? "");
  return meant + (width === columns ? 1 : 0) - (keyAndValue ? 2 : 0);
};

const isUnitsRow = ({ record, width }: Judged): boolean =>
  width > 0 && record.cells.every(isUnitCell);

/** "Reading Id Temperature" over tab-separated rows: one word for each column. */
const spread = (judged: Judged, columns: number): Judged => {
  if (judged.width !== 1 || columns < 2) return judged;
  const words = (judged.record.cells[0] ?? "").trim().split(/\s+/u);
  return words.length === columns ? judge({ cells: words, line: judged.record.line }) : judged;
};

/** Index of the heading above `firstRow`, -1 where there is none: the most meaningful, then the nearest. */
const findHeader = (judged: readonly Judged[], firstRow: number, columns: number): number => {
  let best = -1;
  let bestScore = 0;
  for (let at = firstRow - 1; at >= 0; at -= 1) {
    const candidate = judged[at];
    if (candidate === undefined || isUnitsRow(candidate)) continue;
    // A line of words right above the rows is their heading rather than one further up.
    const isNearest = at === firstRow - 1 || (at === firstRow - 2 && isUnitsRow(judged[at + 1]!));
    const own = headingScore(candidate, columns);
    const score = own > 0 && isNearest ? own + 1 : own;
    if (score > bestScore) {
      best = at;
      bestScore = score;
    }
  }
  return best;
};

/** A heading with one cell fewer than the rows belongs to the columns after the first, where that has the row numbers. */
const alignHeadings = (
  headings: readonly string[],
  rows: readonly Judged[],
  columns: number,
): readonly string[] => {
  const time = headings.findIndex((heading) => /^(?:time|date)$/u.test(headingKind(heading)));
  const kindsAt = (column: number): boolean =>
    rows.slice(0, 20).filter(({ kinds }) => kinds[column] === "time").length > 0;
  const shifted =
    widthOf(headings) === columns - 1 && time >= 0 && !kindsAt(time) && kindsAt(time + 1);
  const aligned = shifted ? ["", ...headings] : [...headings];
  while (aligned.length < columns) aligned.push("");
  return aligned.map((heading) => heading.trim());
};

/** A preamble is shorter than this, and so many records show the rows' shape. */
const judgedRecords = 800;

/**
 * Where the heading, the units line and the first row stand in a sample of
 * records. Without a heading the rows begin with the first record of the file.
 */
export const findLayout = (records: readonly SampleRecord[]): Layout | null => {
  const raw = records.slice(0, judgedRecords).map(judge);
  const first = findFirstRow(raw);
  if (first === -1) return null;
  const rows = raw.slice(first).filter(isRowLike);
  const columnCount = Math.max(
    commonest(rows.map(({ width }) => width)),
    commonest(rows.map(({ record }) => record.cells.length)),
  );
  const effective = Math.max(
    1,
    ...rows.slice(0, 500).map(({ width }) => Math.min(width, columnCount)),
  );
  const judged = raw.map((item, at) => (at < first ? spread(item, effective) : item));
  const header = findHeader(judged, first, columnCount);
  if (header === -1)
    return { headings: null, headerLine: null, units: [], firstRow: 0, preamble: [], columnCount };
  const under = judged[header + 1];
  const hasUnits = under !== undefined && header + 1 < first && isUnitsRow(under);
  return {
    headings: alignHeadings(judged[header]?.record.cells ?? [], rows, effective),
    headerLine: judged[header]?.record.line ?? null,
    units: hasUnits ? under.record.cells.map((cell) => cell.trim()) : [],
    firstRow: header + (hasUnits ? 2 : 1),
    preamble: records.slice(0, header),
    columnCount,
  };
};
