import { assembleGroups } from "./assemble-groups.ts";
import type { AssembledFile, FileProbe } from "./assemble-groups.ts";
import type { Encoding } from "../text/encoding.ts";
import type { Units } from "../columns/file-units.ts";
import { notice } from "../../notice.ts";
import type { Notice } from "../../notice.ts";
import type { Plan } from "../columns/plan.ts";
import { probeNames, roleOf } from "../columns/probe-names.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ReadingOptions, ReadingsFile } from "../readings-file.ts";
import { smallestStep } from "../cells/resolution.ts";
import type { ReadRows } from "./row-reader.ts";
import { splitRows } from "./split-rows.ts";
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

const planNotices = (plan: Plan, names: readonly string[], isSplit: boolean): Notice[] => {
  const notices: Notice[] = [];
  const { preamble, headings } = plan.layout;
  if (preamble.length > 0) notices.push(notice("preamble-skipped", { lines: preamble.length }));
  if (headings === null && !isSplit)
    notices.push(notice("probes-named", { names: names.join(", ") }));
  const ignored = plan.ignored.filter((column) => !isSplit || column !== plan.idColumn?.heading);
  if (ignored.length > 0) notices.push(notice("columns-ignored", { columns: ignored.join(", ") }));
  return notices;
};

const orderNotices = ({ moved, firstMovedLine, gaps }: AssembledFile): Notice[] => {
  const notices: Notice[] = [];
  if (moved > 0)
    notices.push(notice("rows-reordered", { count: moved, firstLine: firstMovedLine }));
  if (gaps !== null) notices.push(notice("gap", { ...gaps, minutes: round(gaps.minutes, 1) }));
  return notices;
};

const movedNotices = ({ movedAt }: ReadRows): Notice[] =>
  movedAt === null ? [] : [notice("columns-moved", { line: movedAt })];

const makeSeries = (
  { column, unit, minutes, celsius }: FileProbe,
  name: string,
  { roles }: ReadingOptions,
): Series => {
  const { heading, printedStep } = column;
  const printed = unit === "degF" ? printedStep / 1.8 : printedStep;
  const resolution = smallestStep(celsius, printed);
  return { name, heading, role: roleOf(name, heading, roles), minutes, celsius, resolution };
};

/** A sensor named in its rows, with the column's name where it has several. */
const namedBySensor = ({ id, column }: FileProbe, several: boolean) => {
  if (id === null) return column;
  const bareName = several ? `${id} ${column.bareName}` : id;
  return { heading: bareName, bareName };
};

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
  const writtenStart = found.seconds[0] ?? 0;
  const split = splitRows(rows, found);
  const assembled = assembleGroups(split.groups, plan.probes, units);
  const { rowsUsed, probes } = assembled;
  if (rowsUsed === 0) return nothingLeft(name, rows);
  if (rowsUsed < 2) return failed("too-few-readings", { file: name, found: rowsUsed });
  const several = plan.probes.length > 1;
  const names = probeNames(probes.map((probe) => namedBySensor(probe, several)));
  const sinceStart = assembled.firstSecond - writtenStart;
  return done({
    name,
    rowsRead: rows.rowsRead,
    rowsUsed,
    setAside: rows.tally.list(),
    cellsSetAside: probes.flatMap(({ cellsSetAside }, at) =>
      cellsSetAside.map((cells) => ({ ...cells, probe: names[at]! })),
    ),
    encoding,
    delimiter: plan.delimiter === "  " ? " " : plan.delimiter,
    decimal: plan.decimal,
    headerLine: plan.layout.headerLine,
    timeFormat: found.format,
    dateOrder: found.dateOrder,
    unit: units[0] ?? "degC",
    intervalSeconds: round(assembled.medianStep * 60, 6),
    startWallClock: found.startWallClock === null ? null : found.startWallClock + sinceStart * 1000,
    notices: [
      ...planNotices(plan, names, split.groups.length > 1),
      ...notices,
      ...found.notices,
      ...movedNotices(rows),
      ...split.notices,
      ...orderNotices(assembled),
    ],
    probes: probes
      .map((probe, at) => makeSeries(probe, names[at]!, parts.options))
      .filter(({ celsius }) => celsius.length > 0),
  });
};
