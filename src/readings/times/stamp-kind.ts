import type { Stamp } from "./stamp.ts";

/** What all stamps of one column share; a row that differs is not one of its times. */
export interface StampKind {
  readonly dated: boolean;
  /** The dates have no year. */
  readonly yearless: boolean;
  /** AM or PM. */
  readonly half: boolean;
  /** Offset from UTC. */
  readonly zoned: boolean;
}

const isYearless = ({ layout }: Stamp): boolean =>
  layout.date !== "none" && layout.year < 0 && layout.compactDate < 0;

export const kindOf = (stamp: Stamp): StampKind => ({
  dated: stamp.layout.date !== "none",
  yearless: isYearless(stamp),
  half: stamp.layout.half >= 0,
  zoned: !Number.isNaN(stamp.offset),
});

/** A date alone fits a dated column: some programs leave out a time of 00:00. */
export const fitsKind = (stamp: Stamp, kind: StampKind): boolean => {
  if ((stamp.layout.date !== "none") !== kind.dated) return false;
  if (isYearless(stamp) !== kind.yearless) return false;
  if (!stamp.timed) return kind.dated && !kind.zoned;
  return stamp.layout.half >= 0 === kind.half && !Number.isNaN(stamp.offset) === kind.zoned;
};
