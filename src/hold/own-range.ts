import type { Points } from "./grid.ts";
import { crossing } from "./hold-start.ts";
import type { Level } from "./level.ts";
import type { Later } from "./plateau.ts";
import { smoothedWithin } from "./smooth.ts";

/** Reach of the smoothing against noise, minutes; slow courses lose nothing by it. */
const smoothing = 5;
/** Central share of the later readings that makes their range, and the one that a power cut does not reach. */
export const usualShare = 0.95;
export const sturdyShare = 0.7;
/**
 * The range of the later readings, for a course without a plateau: the central
 * 95 % of those in the second half of the time from the beginning of the rise
 * to the end, disturbed points left out. A warmer without a thermostat heads
 * for its level over hours and then follows the room, so that level and drift
 * cannot be told apart; what can be told from the log alone is from when on
 * the temperatures were those it later stayed at.
 *
 * @param beginning minute at which the rise begins
 * @param last index of the last point held
 * @returns null with fewer than 3 readings in that half
 */
export const ownRange = (
  raw: Points,
  beginning: number,
  last: number,
  disturbed: Uint8Array,
  share = usualShare,
): Later | null => {
  const { minutes, celsius } = smoothedWithin(raw, smoothing);
  const to = minutes[last]!;
  const middle = (beginning + to) / 2;
  const later = celsius.filter(
    (_, index) => index <= last && minutes[index]! >= middle && disturbed[index] === 0,
  );
  if (later.length < 3) return null;
  later.sort();
  const low = quantile(later, (1 - share) / 2);
  const high = quantile(later, (1 + share) / 2);
  const intercept = (low + high) / 2;
  const reach = (high - low) / 2;
  const flat = { intercept, slope: 0, approach: null, noise: 0, variation: 0 };
  return { level: { ...flat, low: -reach, high: reach }, from: middle, to, disturbed };
};

const quantile = (sorted: Float64Array, at: number): number => {
  const position = at * (sorted.length - 1);
  const below = Math.floor(position);
  const next = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return sorted[below]! + (position - below) * (next - sorted[below]!);
};

/** Half a degree beyond the range is as near as a hold has to be, degC. */
const widened = 0.5;

/**
 * First minute from which the readings stay, but for disturbances, within
 * half a degree of the later range until the end.
 *
 * @returns null where the last of them does not
 */
export const ownRangeStart = (
  raw: Points,
  { level, disturbed }: Later,
  last: number,
): number | null => {
  const points = smoothedWithin(raw, smoothing);
  const reach = level.high + widened;
  const inside = (index: number): boolean =>
    disturbed[index] === 1 || Math.abs(points.celsius[index]! - level.intercept) <= reach;
  let first = last + 1;
  while (first > 0 && inside(first - 1)) first -= 1;
  if (first > last) return null;
  return first === 0 ? points.minutes[0]! : crossing(points, level, -reach, reach, first);
};

/** First minute at which the readings are within half a degree of the later range; the last minute where they never are. */
export const firstEntry = ({ minutes, celsius }: Points, level: Level): number => {
  const reach = level.high + widened;
  let index = 0;
  while (index < minutes.length - 1 && Math.abs(celsius[index]! - level.intercept) > reach)
    index += 1;
  return minutes[index]!;
};
