import { assembleRows } from "./assemble.ts";
import type { AssembledProbe, AssembledRows } from "./assemble.ts";
import type { ProbeColumn } from "../columns/probe-columns.ts";
import type { FileUnit } from "../readings-file.ts";
import type { RowGroup } from "./split-rows.ts";
import { findGaps } from "../times/gaps.ts";

/** One probe of the file: its readings, where they are written, and the sensor named in its rows. */
export interface FileProbe extends AssembledProbe {
  readonly column: ProbeColumn;
  readonly unit: FileUnit;
  readonly id: string | null;
}

/** A step far longer than usual, with the line after it. */
export interface FileGaps {
  readonly count: number;
  readonly minutes: number;
  readonly firstLine: number;
}

export interface AssembledFile {
  readonly rowsUsed: number;
  readonly probes: readonly FileProbe[];
  /** Seconds of the first used row, on the scale of the times found. */
  readonly firstSecond: number;
  readonly moved: number;
  readonly firstMovedLine: number;
  /** Median step between used rows, minutes. */
  readonly medianStep: number;
  readonly gaps: FileGaps | null;
}

/** Minutes from the file's first reading instead of the group's own. */
const later = (minutes: Float64Array, by: number): Float64Array =>
  by === 0 ? minutes : minutes.map((minute) => minute + by);

const gapsOf = (parts: readonly AssembledRows[]): Pick<AssembledFile, "gaps" | "medianStep"> => {
  const found = parts.map(({ minutes, lines }) => ({ ...findGaps(minutes), lines }));
  const medianStep = found[0]?.medianStep ?? Number.NaN;
  const gaps = found.flatMap(({ gaps: own, lines }) =>
    own.map(({ minutes, index }) => ({ minutes, firstLine: lines[index] ?? 0 })),
  );
  const longest = gaps.toSorted((a, b) => b.minutes - a.minutes)[0];
  return { medianStep, gaps: longest === undefined ? null : { ...longest, count: gaps.length } };
};

/** Orders and cleans the rows of each sensor (`assemble.ts`) and counts all minutes from one first reading. */
export const assembleGroups = (
  groups: readonly RowGroup[],
  columns: readonly ProbeColumn[],
  units: readonly FileUnit[],
): AssembledFile => {
  const all = groups.map(({ rows, seconds, id }) => ({
    ...assembleRows(rows, { seconds }, units),
    id,
  }));
  const parts = all.filter(({ rowsUsed }) => rowsUsed > 0);
  const firstSecond = parts.reduce((least, part) => Math.min(least, part.firstSecond), Infinity);
  const out = all.map(({ order }) => order).filter(({ moved }) => moved > 0);
  return {
    rowsUsed: parts.reduce((sum, { rowsUsed }) => sum + rowsUsed, 0),
    firstSecond,
    moved: out.reduce((sum, { moved }) => sum + moved, 0),
    firstMovedLine: out.reduce(
      (least, { firstMovedLine }) => Math.min(least, firstMovedLine),
      Infinity,
    ),
    ...gapsOf(parts),
    probes: parts.flatMap((part) => {
      const by = (part.firstSecond - firstSecond) / 60;
      const shared = later(part.minutes, by);
      return part.probes.map((probe, at) => ({
        ...probe,
        minutes: probe.minutes === part.minutes ? shared : later(probe.minutes, by),
        column: columns[at]!,
        unit: units[at] ?? "degC",
        id: part.id,
      }));
    }),
  };
};
