import { isClock, isDateOnly, isHalfDay } from "../cells/cell-kind.ts";
import { recogniseTimes } from "../times/clock.ts";
import type { TimeOptions, TimeRecogniser } from "../times/time-types.ts";
import { isIndex, risingShare } from "./column-facts.ts";
import type { ColumnFacts } from "./column-facts.ts";
import type { SampleRecord } from "../text/dialect.ts";
import type { HeadingKind } from "./headings.ts";
import type { DecimalSign } from "../cells/numbers.ts";
import type { TimeFormat } from "../readings-file.ts";

/** The columns that tell when, and how they are written. */
export interface WhenColumns {
  readonly columns: readonly number[];
  readonly recogniser: TimeRecogniser;
  /** Signs put right before `clock.ts` gets the cells. */
  readonly rewrite: (cell: string) => string;
}

export interface ColumnView {
  readonly rows: readonly SampleRecord[];
  readonly facts: readonly ColumnFacts[];
  /** With the units of the line below. */
  readonly headings: readonly string[] | null;
  readonly kinds: readonly HeadingKind[];
  readonly decimal: DecimalSign;
}

/** A full date and clock says most; then a day's clock, then time since the start. */
const preference: Record<TimeFormat, number> = {
  "date-and-time-columns": 0,
  "date-time": 1,
  "epoch-seconds": 2,
  "epoch-milliseconds": 2,
  "epoch-microseconds": 2,
  "spreadsheet-serial": 2,
  clock: 3,
  "elapsed-clock": 4,
  "elapsed-milliseconds": 5,
  "elapsed-seconds": 5,
  "elapsed-minutes": 5,
  "elapsed-hours": 5,
  index: 6,
};

const shareOf = (view: ColumnView, column: number, test: (cell: string) => boolean): number => {
  const filled = view.rows.map(({ cells }) => (cells[column] ?? "").trim()).filter(Boolean);
  return filled.length === 0 ? 0 : filled.filter(test).length / filled.length;
};

const most = 0.5;

/** Column sets worth trying: date with clock (and AM/PM), then single columns. */
const candidates = (view: ColumnView): number[][] => {
  const facts = view.facts.filter(({ times }) => times > 0);
  const dates = view.facts.filter(({ index }) => shareOf(view, index, isDateOnly) > most);
  const clocks = facts.filter(({ index }) => shareOf(view, index, isClock) > most);
  const half = (index: number): number[] =>
    index < view.facts.length && shareOf(view, index, isHalfDay) > most ? [index] : [];
  const pairs = dates.flatMap((date) =>
    clocks
      .toSorted((a, b) => Math.abs(a.index - date.index) - Math.abs(b.index - date.index))
      .slice(0, 1)
      .map((clock) => [date.index, clock.index].concat(half(clock.index + 1))),
  );
  const clocksWithHalf = clocks
    .map(({ index }) => [index].concat(half(index + 1)))
    .filter(({ length }) => length === 2);
  const singles = view.facts
    .filter((column) => mayBeTime(view, column))
    .map(({ index }) => [index]);
  return [...pairs, ...clocksWithHalf, ...singles];
};

const isLarge = (facts: ColumnFacts): boolean => Math.abs(facts.median) > 20_000;

/**
 * A single column worth trying as times: its cells look like times, or they are
 * rising numbers under a heading that says time, or numbers as large as a
 * date's serial number, or (no headings at all) the first column, rising, and
 * not row numbers.
 */
const mayBeTime = (view: ColumnView, column: ColumnFacts): boolean => {
  const kind = view.kinds[column.index] ?? "unknown";
  if (column.times >= most * column.filled && column.times > 0) return true;
  if (column.numbers < most * column.filled || column.filled === 0) return false;
  if (kind === "time" || kind === "date") return true;
  if (kind !== "unknown" || column.index > 1 || risingShare(column) < 0.9) return false;
  return (
    isLarge(column) ||
    (column.index === 0 && !isIndex(column) && view.headings === null) ||
    view.headings?.[column.index]?.trim() === "t"
  );
};

const asWritten = (cell: string): string => cell;
const toPoint = (cell: string): string => cell.replace(",", ".");
const toColon = (cell: string): string => cell.replace(".", ":");
const pointClock = /^\s*(?:[01]?\d|2[0-3])\.[0-5]\d\s*$/u;

/** Elapsed "0,5" becomes "0.5"; where commas are decimal, "22.30" in every cell is a clock. */
const rewriteFor = (view: ColumnView, columns: readonly number[]): WhenColumns["rewrite"] => {
  const [column = 0] = columns;
  const isNumeric =
    columns.length === 1 && (view.facts.find(({ index }) => index === column)?.times ?? 0) === 0;
  if (!isNumeric || view.decimal !== ",") return asWritten;
  return shareOf(view, column, (cell) => pointClock.test(cell)) > 0.9 ? toColon : toPoint;
};

interface Found extends WhenColumns {
  readonly rank: number;
}

const attempt = (
  view: ColumnView,
  columns: readonly number[],
  options: TimeOptions,
): Found | null => {
  const rewrite = rewriteFor(view, columns);
  const samples = view.rows
    .map(({ cells }) => columns.map((column) => cells[column] ?? ""))
    .filter((cells) => cells.every((cell) => cell.trim() !== ""))
    .map((cells) => cells.map(rewrite));
  const headings = columns.map((column) => view.headings?.[column] ?? "");
  const recogniser =
    samples.length === 0 ? null : recogniseTimes(samples, { ...options, headings });
  if (recogniser === null) return null;
  const saysTime = columns.some((column) => /^(?:time|date)$/u.test(view.kinds[column] ?? ""));
  const isElsewhere = columns.some((column) => view.kinds[column] === "other");
  const rank =
    preference[recogniser.format] +
    (saysTime ? 0 : 0.3) +
    (isElsewhere ? 0.4 : 0) -
    (samples.length / Math.max(1, view.rows.length)) * 0.2;
  return { columns, recogniser, rewrite, rank };
};

/** The columns that tell when each row was read; null where there are none. */
export const findWhenColumns = (view: ColumnView, options: TimeOptions): WhenColumns | null => {
  let best: Found | null = null;
  for (const columns of candidates(view)) {
    const found = attempt(view, columns, options);
    if (found !== null && (best === null || found.rank < best.rank)) best = found;
  }
  return best;
};
