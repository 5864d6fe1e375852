/**
 * One probe's readings, ready for analysis.
 *
 * `minutes` are counted from the first reading of the file (of the earliest
 * file, where several loggers ran together), strictly increasing, and may be
 * unevenly spaced; `celsius` has the same length and holds no NaN. Probes of one file share the same `minutes` array where none
 * of them lacks a cell.
 */
export interface Series {
  readonly name: string;
  /** The column's heading as the file prints it, unit and all, where it has one. */
  readonly heading?: string;
  readonly role: ProbeRole;
  readonly minutes: Float64Array;
  /** degC, as read: the thermometer's correction is not applied yet. */
  readonly celsius: Float64Array;
  /** Smallest step between different values as the file prints them, degC. */
  readonly resolution: number;
}

/** Where the probe sat: in the food's place, in the bath around it, in the room. */
export type ProbeRole = "food" | "bath" | "room";
export const probeRoles: readonly ProbeRole[] = ["food", "bath", "room"];
