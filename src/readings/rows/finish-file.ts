import { assembleRows } from "./assemble.ts";
import type { AssembledRows } from "./assemble.ts";
import type { Encoding } from "../text/encoding.ts";
import type { Units } from "../columns/file-units.ts";
import { findGaps } from "../times/gaps.ts";
import type { Gaps } from "../times/gaps.ts";
import { notice } from "../../notice.ts";
import type { Notice } from "../../notice.ts";
import type { Plan } from "../columns/plan.ts";
import { probeNames, roleOf } from "../columns/probe-names.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ReadingOptions, ReadingsFile } from "../readings-file.ts";
import { smallestStep } from "../cells/resolution.ts";
import type { ReadRows } from "./row-reader.ts";
import type { Series } from "../series.ts";
import type { FoundTimes } from "../times/time-types.ts";

/** All that was found on the way through one file. */
export interface ReadParts {
  readonly name: string;
  readonly plan: Plan;
  readonly rows: ReadRows;
  readonly found: FoundTimes;
  readonly units: Units;
  readonly encoding: Encoding;
  readonly options: ReadingOptions;
}

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

const planNotices = (plan: Plan, names: readonly string[]): Notice[] => {
  const notices: Notice[] = [];
  const { preamble, headings } = plan.layout;
  if (preamble.length > 0) notices.push(notice("preamble-skipped", { lines: preamble.length }));
  if (headings === null) notices.push(notice("probes-named", { names: names.join(", ") }));
  if (plan.ignored.length > 0)
    notices.push(notice("columns-ignored", { columns: plan.ignored.join(", ") }));
  return notices;
};

const orderNotices = ({ order, lines }: AssembledRows, gaps: Gaps["gaps"]): Notice[] => {
  const notices: Notice[] = [];
  if (order.moved > 0)
    notices.push(notice("rows-reordered", { count: order.moved, firstLine: order.firstMovedLine }));
  const longest = gaps.toSorted((a, b) => b.minutes - a.minutes)[0];
  if (longest !== undefined) {
    const facts = { minutes: round(longest.minutes, 1), count: gaps.length };
    notices.push(notice("gap", { firstLine: lines[longest.index] ?? 0, ...facts }));
  }
  return notices;
};

const makeSeries = (
  { plan, units: { units }, options }: ReadParts,
  names: readonly string[],
  assembled: AssembledRows,
): Series[] =>
  assembled.probes.map(({ minutes, celsius }, at) => {
    const { heading, printedStep } = plan.probes[at]!;
    const name = names[at]!;
    const printed = units[at] === "degF" ? printedStep / 1.8 : printedStep;
    const resolution = smallestStep(celsius, printed);
    return { name, role: roleOf(name, heading, options.roles), minutes, celsius, resolution };
  });

const nothingLeft = (name: string, rows: ReadRows) => {
  if (rows.rowsRead === 0) return failed("too-few-readings", { file: name, found: 0 });
  const reasons = rows.tally
    .list()
    .map(({ reason, count, firstLine }) => `${count} ${reason} (first at line ${firstLine})`);
  return failed("no-readings-left", {
    file: name,
    rowsRead: rows.rowsRead,
    setAside: reasons.join(", "),
  });
};

/** Orders and cleans the rows and says everything about the file; fails where fewer than two are left. */
export const finishFile = (parts: ReadParts): Outcome<ReadingsFile> => {
  const { name, plan, rows, found, encoding } = parts;
  const { units, notices } = parts.units;
  const assembled = assembleRows(rows, found, units);
  if (assembled.rowsUsed === 0) return nothingLeft(name, rows);
  if (assembled.rowsUsed < 2)
    return failed("too-few-readings", { file: name, found: assembled.rowsUsed });
  const names = probeNames(plan.probes);
  const series = makeSeries(parts, names, assembled);
  const { medianStep, gaps } = findGaps(assembled.minutes);
  const sinceStart = assembled.firstSecond - (found.seconds[0] ?? 0);
  return done({
    name,
    rowsRead: rows.rowsRead,
    rowsUsed: assembled.rowsUsed,
    setAside: rows.tally.list(),
    cellsSetAside: assembled.probes.flatMap(({ cellsSetAside }, at) =>
      cellsSetAside.map((cells) => ({ ...cells, probe: names[at]! })),
    ),
    encoding,
    delimiter: plan.delimiter,
    decimal: plan.decimal,
    headerLine: plan.layout.headerLine,
    timeFormat: found.format,
    dateOrder: found.dateOrder,
    unit: units[0] ?? "degC",
    intervalSeconds: round(medianStep * 60, 6),
    startWallClock: found.startWallClock === null ? null : found.startWallClock + sinceStart * 1000,
    notices: [
      ...planNotices(plan, names),
      ...notices,
      ...found.notices,
      ...orderNotices(assembled, gaps),
    ],
    probes: series.filter(({ celsius }) => celsius.length > 0),
  });
};
