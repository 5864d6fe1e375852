import { gapLimit, usualStep } from "../stats/time-weights.ts";
import type { HeatingSpell } from "./heating-types.ts";
import type { HeatingReadings } from "./lethal-rate.ts";

/**
 * What a gap in the readings is taken for: `break` ends a spell at the last
 * reading before it; `bridge` lets it go on wherever one side was hot, the most
 * that can have happened.
 */
export type GapRule = "break" | "bridge";

/** Intervals of so many minutes and more are gaps. */
export const gapOf = ({ minutes }: HeatingReadings): number => gapLimit(usualStep(minutes));

const crossing = ({ minutes, celsius }: HeatingReadings, index: number, level: number): number => {
  const [t0, t1] = [minutes[index - 1]!, minutes[index]!];
  const [c0, c1] = [celsius[index - 1]!, celsius[index]!];
  return t0 + ((t1 - t0) * (level - c0)) / (c1 - c0);
};

/**
 * Longest continuous spell at or above `level`, degC. Between two readings the
 * temperature runs straight, so a spell begins and ends where that line crosses
 * the level; a log that begins or ends hot counts from its first and to its
 * last reading. null where no reading reaches the level; of equal ones the
 * first. Linear in the readings.
 */
export const longestSpell = (
  readings: HeatingReadings,
  level: number,
  rule: GapRule = "break",
  gap: number = gapOf(readings),
): HeatingSpell | null => {
  const { minutes, celsius } = readings;
  let best: HeatingSpell | null = null;
  let from: number | null = null;
  const close = (end: number): void => {
    if (from !== null && (best === null || end - from > best.minutes))
      best = { fromMinute: from, toMinute: end, minutes: end - from };
    from = null;
  };
  for (let index = 0; index < minutes.length; index += 1) {
    const [before, here] = [minutes[index - 1] ?? minutes[index]!, minutes[index]!];
    const hot = celsius[index]! >= level;
    const apart = here - before >= gap;
    if (apart && rule === "break") close(before);
    if (hot && from === null) {
      const edge = index === 0 || (apart && rule === "break") ? here : before;
      from = index === 0 || apart ? edge : crossing(readings, index, level);
    } else if (!hot && from !== null) close(apart ? here : crossing(readings, index, level));
  }
  close(minutes[minutes.length - 1] ?? 0);
  return best;
};

/** Halvings of the range: to a billionth of a degree. */
const halvings = 40;

/**
 * Highest temperature at or above which it stood for `asked` minutes without a
 * break, degC, by bisection: the longest spell never grows with the level. null
 * where no unbroken stretch of readings is that long.
 */
export const heldLevel = (
  readings: HeatingReadings,
  asked: number,
  rule: GapRule = "break",
): number | null => {
  const gap = gapOf(readings);
  const longEnough = (level: number): boolean =>
    (longestSpell(readings, level, rule, gap)?.minutes ?? -1) >= asked;
  let [low, high] = extremes(readings.celsius);
  if (!longEnough(low)) return null;
  if (longEnough(high)) return high;
  for (let step = 0; step < halvings; step += 1) {
    const middle = (low + high) / 2;
    if (longEnough(middle)) low = middle;
    else high = middle;
  }
  return low;
};

const extremes = (celsius: Float64Array): [low: number, high: number] => {
  let [low, high] = [Infinity, -Infinity];
  for (const value of celsius) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
};

/** The most that the log leaves possible: gaps bridged, and hot before its first and after its last reading. */
export const heldLevelAtMost = (readings: HeatingReadings, asked: number): number => {
  const { celsius } = readings;
  const ends = Math.max(celsius[0] ?? -Infinity, celsius[celsius.length - 1] ?? -Infinity);
  return Math.max(ends, heldLevel(readings, asked, "bridge") ?? -Infinity);
};
