import { indexesOf } from "./pick.ts";
import type { Tally } from "./tally.ts";

/** Rows to be used, in order of time, no two at one time. */
export interface Order {
  /** Indexes of the rows; null where all rows stand in order as they are. */
  readonly rows: Uint32Array | null;
  /** Rows that came after a later one. */
  readonly moved: number;
  readonly firstMovedLine: number;
}

const isStrictlyRising = (seconds: Float64Array, wanted: Uint8Array): boolean => {
  for (let row = 0; row < seconds.length; row += 1) {
    if (wanted[row] !== 1) return false;
    if (row > 0 && !(seconds[row]! > seconds[row - 1]!)) return false;
  }
  return true;
};

/**
 * Puts the wanted rows in order of time; the sort is stable, and of rows at one
 * time the first in the file is kept, the others are counted as `duplicate`.
 * n log n where rows are out of order, else linear.
 */
export const putInOrder = (
  seconds: Float64Array,
  lines: Uint32Array,
  wanted: Uint8Array,
  tally: Tally,
): Order => {
  if (isStrictlyRising(seconds, wanted)) return { rows: null, moved: 0, firstMovedLine: 0 };
  const rows = indexesOf(wanted);
  let latest = Number.NEGATIVE_INFINITY;
  let moved = 0;
  let firstMovedLine = 0;
  for (const row of rows) {
    const second = seconds[row]!;
    if (second < latest) {
      moved += 1;
      if (firstMovedLine === 0) firstMovedLine = lines[row]!;
    } else latest = second;
  }
  if (moved > 0) rows.sort((a, b) => seconds[a]! - seconds[b]! || a - b);
  let kept = 0;
  for (const row of rows) {
    if (kept > 0 && seconds[row] === seconds[rows[kept - 1]!]) {
      tally.add("duplicate", lines[row]!);
    } else {
      rows[kept] = row;
      kept += 1;
    }
  }
  return { rows: rows.subarray(0, kept), moved, firstMovedLine };
};
