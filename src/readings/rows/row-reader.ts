import { growableCounts } from "./growable.ts";
import { headingUnit } from "../columns/heading-unit.ts";
import type { Plan } from "../columns/plan.ts";
import { createProbeReader, textFlag, unparseable } from "../cells/probe-reader.ts";
import type { NoteUnit } from "../cells/probe-reader.ts";
import { createHeadingFollower } from "./heading-again.ts";
import { createRowIdReader } from "./row-ids.ts";
import type { RowIds } from "./row-ids.ts";
import { isMisaligned, isTextRow, rowKey } from "./row-text.ts";
import { joinDecimals } from "../text/split-decimals.ts";
import { createTally } from "./tally.ts";
import type { Tally } from "./tally.ts";
import type { TimeAccumulator } from "../times/time-types.ts";

/** All rows of a file, before they are put in order and looked at together. */
export interface ReadRows {
  readonly rowsRead: number;
  /** Rows already set aside: no time, repeated heading, trailer. */
  readonly tally: Tally;
  /** 1-based line of each row with a time. */
  readonly lines: Uint32Array;
  /** NaN and a reason where there is no number. */
  readonly probes: readonly { readonly values: Float64Array; readonly reasons: Uint8Array }[];
  /** Where a column names the sensor of each row. */
  readonly ids: RowIds | null;
  readonly times: TimeAccumulator | null;
  /** The first cell that names another unit than its column. */
  readonly otherUnit: { readonly line: number; readonly found: string } | null;
  /** A heading in the middle that names other columns, with readings below it. */
  readonly otherHeading: { readonly line: number; readonly found: string } | null;
  /** The first heading in the middle by which the rows below it are read. */
  readonly movedAt: number | null;
}

export interface RowReader {
  row(cells: readonly string[], line: number): void;
  /** A blank line, which in a file of readings alone is a reading that is missing. */
  blank(line: number): void;
  finish(): ReadRows;
}

/** Text rows wait until it is clear whether readings, a heading or the end of the file follows them. */
interface Waiting {
  count: number;
  firstLine: number;
}

const headingKeys = ({ layout }: Plan): Set<string> => {
  const keys = new Set<string>();
  if (layout.headings !== null) keys.add(rowKey(layout.headings));
  if (layout.units.length > 0) keys.add(rowKey(layout.units));
  for (const { cells } of layout.preamble) keys.add(rowKey(cells));
  keys.delete("");
  return keys;
};

/**
 * Takes the rows of one file in their order and sorts out, row by row, what
 * needs no look at the others: cells that are no numbers, rows without a time,
 * the heading printed again, text after the last reading. What it keeps grows
 * by one number and one byte for each cell.
 */
export const createRowReader = (plan: Plan): RowReader => {
  const { when, split, layout } = plan;
  const tally = createTally();
  const lines = growableCounts();
  const keys = headingKeys(plan);
  const headingLength = layout.headings?.length ?? 0;
  const waiting: Waiting = { count: 0, firstLine: 0 };
  const times = when?.recogniser.createAccumulator() ?? null;
  const ids = plan.idColumn === null ? null : createRowIdReader(plan.idColumn);
  const timeCells: string[] = [];
  let rowsRead = 0;
  let otherUnit: ReadRows["otherUnit"] = null;
  const noteUnit: NoteUnit = (line, found) => {
    otherUnit ??= { line, found: found.trim() };
  };
  const probes = plan.probes.map((probe) => createProbeReader(probe, plan.decimal, noteUnit));

  const settle = (reason: Parameters<Tally["add"]>[0]): void => {
    if (waiting.count > 0) tally.add(reason, waiting.firstLine, waiting.count);
    waiting.count = 0;
  };
  const wait = (line: number): void => {
    if (waiting.count === 0) waiting.firstLine = line;
    waiting.count += 1;
  };
  const faultReason = when === null ? "unparseable-temperature" : "unparseable-time";

  const follower = createHeadingFollower(layout.headings, when?.columns ?? []);

  /** Heading printed again, text, or a row whose time cannot be read. */
  const putAside = (cells: readonly string[], line: number): void => {
    const isKnown = keys.has(rowKey(cells));
    if (isKnown || follower.follow(cells, line)) {
      if (isKnown) follower.reset();
      settle("repeated-header");
      tally.add("repeated-header", line);
      return;
    }
    for (const { column, unit } of plan.probes) {
      const found = cells.length === headingLength ? headingUnit(cells[column] ?? "") : null;
      if (
        found !== null &&
        unit !== null &&
        found !== unit &&
        /\p{L}{3}/u.test(cells[column] ?? "")
      )
        noteUnit(line, cells[column] ?? "");
    }
    if (isTextRow(cells)) wait(line);
    else tally.add(faultReason, line);
  };

  const hasTime = (cells: readonly string[], line: number): boolean => {
    if (when === null || times === null) return isReading(cells);
    for (let at = 0; at < when.columns.length; at += 1)
      timeCells[at] = when.rewrite(cells[when.columns[at]!] ?? "");
    return times.add(timeCells, line);
  };
  /** Without times: a row with a number, a flag or an empty cell where the temperatures stand, and not a summary line. */
  const isReading = (cells: readonly string[]): boolean => {
    const reasons = probes.map((probe) => probe.peek(cells));
    if (reasons.includes(textFlag)) return true;
    const isSummary = !plan.textRowsUsual && (cells[0] ?? "").trim() !== "" && isTextRow(cells);
    return !isSummary && reasons.some((reason) => reason !== unparseable);
  };

  const nothing: readonly string[] = [""];
  const blanks: number[] = [];
  /** Blank lines between two readings; those before and after all of them are none. */
  const settleBlanks = (): void => {
    for (const line of blanks) {
      rowsRead += 1;
      lines.push(line);
      for (const probe of probes) probe.read(nothing, line);
    }
    blanks.length = 0;
  };

  return {
    blank(line) {
      if (plan.blankIsMissing && lines.length > 0) blanks.push(line);
    },
    row(written, line) {
      rowsRead += 1;
      const joined = split === null ? written : joinDecimals(written, split);
      const cells = follower.inPlace(joined);
      if (!hasTime(cells, line)) {
        putAside(joined, line);
        return;
      }
      follower.reading();
      settle(faultReason);
      if (blanks.length > 0) settleBlanks();
      lines.push(line);
      ids?.read(cells);
      const refused = split === null && isMisaligned(cells, plan.delimiter, layout.columnCount);
      for (const probe of probes) {
        if (refused) probe.refuse();
        else probe.read(cells, line);
      }
    },
    finish() {
      settle("trailer");
      return {
        rowsRead,
        tally,
        lines: lines.view(),
        probes: probes.map(({ cells }) => ({
          values: cells.values.view(),
          reasons: cells.reasons.view(),
        })),
        ids: ids?.finish() ?? null,
        times,
        otherUnit,
        otherHeading: follower.other(),
        movedAt: follower.movedAt(),
      };
    },
  };
};
