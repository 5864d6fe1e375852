import type { SetAside, SetAsideReason } from "../readings-file.ts";

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

/** Counts what is set aside, by reason, with the first line of each. */
export interface Tally {
  add(reason: SetAsideReason, line: number, count?: number): void;
  total(): number;
  /** In the order of the first lines. */
  list(): SetAside[];
}

export const createTally = (): Tally => {
  const counts = new Map<SetAsideReason, { count: number; firstLine: number }>();
  return {
    add(reason, line, count = 1) {
      const entry = counts.get(reason);
      if (entry === undefined) counts.set(reason, { count, firstLine: line });
      else {
        entry.count += count;
        if (line < entry.firstLine) entry.firstLine = line;
      }
    },
    total() {
      let sum = 0;
      for (const { count } of counts.values()) sum += count;
      return sum;
    },
    list: () =>
      [...counts]
        .map(([reason, { count, firstLine }]) => ({ reason, count, firstLine }))
        .toSorted((a, b) => a.firstLine - b.firstLine || (a.reason < b.reason ? -1 : 1)),
  };
};
