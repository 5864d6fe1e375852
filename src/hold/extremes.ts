import type { Points } from "./grid.ts";
import { shortestHold } from "./hold.ts";

/** Share of the points that may be stray on the cold side. */
const strayShare = 0.002;
/** Share of the points above the warmest at most: a short log has little to spare. */
const mostBrief = 0.1;

/**
 * Coldest and warmest of a log, degC, for scale: what lasts shorter in total
 * than the shortest hold (a glitch, a burst of steam) does not count as its
 * warmth, and two in a thousand points not as its cold.
 */
export const extremes = ({ minutes, celsius }: Points): [number, number] => {
  const span = minutes[minutes.length - 1]! - minutes[0]!;
  const sorted = celsius.toSorted();
  const last = sorted.length - 1;
  const brief = Math.min(mostBrief, shortestHold / Math.max(span, 1));
  return [sorted[Math.floor(last * strayShare)]!, sorted[Math.ceil(last * (1 - brief))]!];
};
