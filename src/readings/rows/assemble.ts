import type { FoundTimes } from "../times/time-types.ts";
import { putInOrder } from "./in-order.ts";
import type { Order } from "./in-order.ts";
import { good, reasonOf } from "./tally.ts";
import type { CellsSetAside, FileUnit } from "../readings-file.ts";
import { indexesOf, pick, pickBytes, pickCounts } from "./pick.ts";
import type { ReadRows } from "./row-reader.ts";
import { createTally } from "./tally.ts";
import { finiteCells, markCodes, markLeaps, toCelsius } from "../cells/temperature-cells.ts";

/** One probe's good readings. */
export interface AssembledProbe {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  readonly cellsSetAside: readonly Omit<CellsSetAside, "probe">[];
}

export interface AssembledRows {
  readonly rowsUsed: number;
  readonly probes: readonly AssembledProbe[];
  /** Times of all used rows, minutes from the first. */
  readonly minutes: Float64Array;
  readonly lines: Uint32Array;
  /** Seconds of the first used row, on the scale of the times found. */
  readonly firstSecond: number;
  readonly order: Order;
}

interface Cells {
  readonly celsius: Float64Array;
  readonly reasons: Uint8Array;
}

/** 1 for each row with a good cell; the others are counted by the reason of their first cell. */
const usableRows = (cells: readonly Cells[], lines: Uint32Array, rows: ReadRows): Uint8Array => {
  const wanted = new Uint8Array(lines.length);
  for (const { reasons } of cells) {
    for (let row = 0; row < wanted.length; row += 1) if (reasons[row] === good) wanted[row] = 1;
  }
  const first = cells[0]?.reasons;
  for (let row = 0; row < wanted.length; row += 1)
    if (wanted[row] === 0) rows.tally.add(reasonOf(first?.[row] ?? 0), lines[row]!);
  return wanted;
};

interface Table {
  readonly seconds: Float64Array;
  readonly lines: Uint32Array;
  readonly cells: readonly Cells[];
}

const select = (table: Table, indexes: Uint32Array | null): Table =>
  indexes === null
    ? table
    : {
        seconds: pick(table.seconds, indexes),
        lines: pickCounts(table.lines, indexes),
        cells: table.cells.map(({ celsius, reasons }) => ({
          celsius: pick(celsius, indexes),
          reasons: pickBytes(reasons, indexes),
        })),
      };

const markedRows = (wanted: Uint8Array): Uint32Array | null =>
  wanted.includes(0) ? indexesOf(wanted) : null;

const minutesFrom = (seconds: Float64Array, first: number): Float64Array => {
  const minutes = new Float64Array(seconds.length);
  for (let at = 0; at < seconds.length; at += 1) minutes[at] = (seconds[at]! - first) / 60;
  return minutes;
};

const countCells = (reasons: Uint8Array, lines: Uint32Array): AssembledProbe["cellsSetAside"] => {
  const tally = createTally();
  for (let at = 0; at < reasons.length; at += 1)
    if (reasons[at] !== good) tally.add(reasonOf(reasons[at]!), lines[at]!);
  return tally.list();
};

/**
 * Brings the rows read into order and sets aside what shows only beside other
 * rows: sensor codes and impossible values first, then rows without any good
 * cell, order and duplicates, power-on values and spikes, and rows whose last
 * good cell has gone by that. The rows' arrays are changed in place.
 */
export const assembleRows = (
  rows: ReadRows,
  found: Pick<FoundTimes, "seconds">,
  units: readonly FileUnit[],
): AssembledRows => {
  const cells = rows.probes.map(({ values, reasons }, at) => {
    const own: Cells = { celsius: values, reasons };
    toCelsius(own.celsius, units[at] ?? "degC");
    markCodes(own.celsius, own.reasons);
    return own;
  });
  const wanted = usableRows(cells, rows.lines, rows);
  const order = putInOrder(found.seconds, rows.lines, wanted, rows.tally);
  const ordered = select({ seconds: found.seconds, lines: rows.lines, cells }, order.rows);
  const roughMinutes = minutesFrom(ordered.seconds, ordered.seconds[0] ?? 0);
  for (const { celsius, reasons } of ordered.cells) markLeaps(roughMinutes, celsius, reasons);
  const left = select(ordered, markedRows(usableRows(ordered.cells, ordered.lines, rows)));
  const firstSecond = left.seconds[0] ?? 0;
  const minutes =
    left.seconds === ordered.seconds ? roughMinutes : minutesFrom(left.seconds, firstSecond);
  const probes = left.cells.map(({ celsius, reasons }) => {
    const finite = finiteCells(celsius);
    return {
      minutes: finite === null ? minutes : pick(minutes, finite),
      celsius: finite === null ? celsius : pick(celsius, finite),
      cellsSetAside: countCells(reasons, left.lines),
    };
  });
  return { rowsUsed: left.lines.length, probes, minutes, lines: left.lines, firstSecond, order };
};
