import { mostSensors } from "../columns/id-column.ts";
import type { IdColumn } from "../columns/id-column.ts";
import { growableBytes } from "./growable.ts";

/** Which sensor each row is of. */
export interface RowIds {
  readonly heading: string;
  readonly names: readonly string[];
  /** Index into `names`, one for each row with a time. */
  readonly ofRow: Uint8Array;
}

export interface RowIdReader {
  read(cells: readonly string[]): void;
  /** Null where there are too many names for sensors, or fewer than two. */
  finish(): RowIds | null;
}

/** Reads the column of sensors' names; an empty cell stands for the name above it. */
export const createRowIdReader = ({ column, heading }: IdColumn): RowIdReader => {
  const known = new Map<string, number>();
  const ofRow = growableBytes();
  let last = "";
  let lastIndex = 0;
  return {
    read(cells) {
      const name = (cells[column] ?? "").trim();
      if (name !== last && name !== "") {
        last = name;
        lastIndex = known.get(name) ?? known.size;
        if (lastIndex <= mostSensors) known.set(name, lastIndex);
      }
      if (known.size <= mostSensors) ofRow.push(lastIndex);
    },
    finish: () =>
      known.size < 2 || known.size > mostSensors
        ? null
        : { heading, names: [...known.keys()], ofRow: ofRow.view() },
  };
};
