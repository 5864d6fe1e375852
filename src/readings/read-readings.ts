import { settleUnits } from "./columns/file-units.ts";
import { finishFile } from "./rows/finish-file.ts";
import { notice } from "../notice.ts";
import { makePlan } from "./columns/plan.ts";
import type { Plan } from "./columns/plan.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { openText } from "./text/read-ahead.ts";
import type { OpenedText } from "./text/read-ahead.ts";
import type { ByteSource, ReadingOptions, ReadingsFile } from "./readings-file.ts";
import { createRecordReader } from "./text/records.ts";
import { createRecordSplitter } from "./text/record-splitter.ts";
import { createRowReader } from "./rows/row-reader.ts";
import type { ReadRows } from "./rows/row-reader.ts";
import type { FoundTimes } from "./times/time-types.ts";

/** Streams all rows of a text through the plan. */
const readRows = async (text: OpenedText, plan: Plan): Promise<ReadRows> => {
  const { layout, delimiter } = plan;
  const splitter = createRecordSplitter(delimiter);
  const rows = createRowReader(plan);
  let passed = 0;
  const visit = (cells: readonly string[], line: number): void => {
    if (passed >= layout.firstRow) rows.row(cells, line);
    else passed += 1;
  };
  const read = createRecordReader(delimiter, visit, rows.blank);
  for await (const piece of text.pieces) {
    const block = splitter.push(piece);
    if (block !== "") read(block);
  }
  const last = splitter.end();
  if (last !== "") read(last);
  return rows.finish();
};

/** Rows of a file without times stand evenly, as the person said. */
const evenTimes = (count: number, intervalSeconds: number): FoundTimes => {
  const seconds = new Float64Array(count);
  for (let at = 0; at < count; at += 1) seconds[at] = at * intervalSeconds;
  const notices = [notice("interval-applied", { seconds: intervalSeconds })];
  return { format: "index", seconds, startWallClock: null, dateOrder: null, notices };
};

/**
 * Times of all rows: as written, else (no times, or times that can be read in
 * more than one way) as far apart as the person said.
 */
const findTimes = (rows: ReadRows, { intervalSeconds }: ReadingOptions): Outcome<FoundTimes> => {
  const even = (seconds: number) => done(evenTimes(rows.lines.length, seconds));
  if (rows.times === null) return even(intervalSeconds ?? 1);
  const found = rows.times.finish();
  const isOpen = !found.ok && found.problem.code === "time-undecidable";
  return isOpen && intervalSeconds !== undefined ? even(intervalSeconds) : found;
};

/**
 * Reads a logger's file from bytes to probes. Encoding, delimiter, decimal
 * sign, preamble, heading, units, columns and times are found in the file's
 * first 128 KB; the rows are then streamed, each used or set aside with its
 * reason and line. What the file leaves open is asked for by a problem that
 * names the option. Memory: about 8 bytes for each cell and 13 for each row.
 */
export const readReadings = async (
  source: ByteSource,
  options: ReadingOptions,
): Promise<Outcome<ReadingsFile>> => {
  const opened = await openText(source, options);
  if (!opened.ok) return opened;
  const text = opened.value;
  const planned = makePlan(source.name, text.head, options);
  if (!planned.ok) return planned;
  const plan = planned.value;
  const rows = await readRows(text, plan);
  if (rows.otherUnit !== null)
    return failed("units-mixed", { file: source.name, ...rows.otherUnit });
  if (rows.otherHeading !== null)
    return failed("columns-changed", { file: source.name, ...rows.otherHeading });
  const found = findTimes(rows, options);
  if (!found.ok) return found;
  const units = settleUnits(source.name, plan, rows, options.unit);
  if (!units.ok) return units;
  const parts = { name: source.name, plan, rows, options, encoding: text.encoding() };
  return finishFile({ ...parts, found: found.value, units: units.value });
};
