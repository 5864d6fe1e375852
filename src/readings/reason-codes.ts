import type { SetAsideReason } from "./readings-file.ts";

/** Reasons as bytes, so that one is kept for each cell of millions; 0 is a good cell. */
const reasons: readonly SetAsideReason[] = [
  "missing",
  "unparseable-temperature",
  "text-flag",
  "sensor-fault",
  "out-of-range",
  "spike",
];

export const good = 0;
export const codeOf = (reason: SetAsideReason): number => reasons.indexOf(reason) + 1;
export const reasonOf = (code: number): SetAsideReason =>
  reasons[code - 1] ?? "unparseable-temperature";
