import { notice } from "../../notice.ts";
import type { Notice } from "../../notice.ts";

/** Stamps are printed to the minute or to the second, seconds. */
const grains = [60, 1] as const;
/** Share of the stamps that must hold the usual count of readings, one more or one less. */
const leastShare = 0.8;
/** Under so many stamps no count is usual. */
const fewestStamps = 4;

/** Where each run of equal stamps begins; the last entry is the end. */
const runStarts = (seconds: Float64Array): Uint32Array | null => {
  let count = 0;
  for (let row = 0; row < seconds.length; row += 1)
    if (row === 0 || seconds[row] !== seconds[row - 1]) count += 1;
  // Nearly every stamp stands alone: nothing to spread.
  if (count > 0.8 * seconds.length || count < fewestStamps) return null;
  const starts = new Uint32Array(count + 1);
  let run = 0;
  for (let row = 0; row < seconds.length; row += 1) {
    if (row > 0 && seconds[row] === seconds[row - 1]) continue;
    starts[run] = row;
    run += 1;
  }
  starts[count] = seconds.length;
  return starts;
};

/** The whole minute or second that all stamps are multiples of, null where there is none. */
const grainOf = (seconds: Float64Array): number | null => {
  const first = seconds[0] ?? 0;
  const whole = (grain: number): boolean =>
    seconds.every((value) => Math.abs((value - first) % grain) < 1e-6);
  return grains.find(whole) ?? null;
};

const middle = (values: Float64Array): number =>
  values.toSorted()[values.length >> 1] ?? Number.NaN;

/** Readings that a stamp usually holds; null where that is one, or not regular. */
const usualCount = (seconds: Float64Array, starts: Uint32Array, grain: number): number | null => {
  const inner = starts.length - 3;
  const counts = new Float64Array(Math.max(0, inner));
  const steps = new Float64Array(Math.max(0, inner));
  for (let run = 0; run < inner; run += 1) {
    counts[run] = starts[run + 2]! - starts[run + 1]!;
    steps[run] = seconds[starts[run + 2]!]! - seconds[starts[run + 1]!]!;
  }
  const usual = middle(counts);
  // Two rows every five minutes are one row written twice, not readings of one minute.
  if (!(usual >= 2) || middle(steps) !== grain) return null;
  const near = counts.filter((count) => count >= 2 && Math.abs(count - usual) <= 1).length;
  return near >= leastShare * counts.length ? usual : null;
};

/**
 * Spreads rows of equal stamps evenly over the minute (or second) to which a
 * clock was printed, in place, where the file shows that it holds several
 * readings in each: the usual count is two or more, nearly all stamps have it
 * (one more or less), and one stamp follows the other without a pause. The
 * first stamp's readings are its last ones. Anywhere else rows of one stamp
 * stay as they are, for `in-order.ts` to call duplicates.
 */
export const spreadStamps = (seconds: Float64Array): readonly Notice[] => {
  const starts = runStarts(seconds);
  const grain = starts === null ? null : grainOf(seconds);
  const usual = starts === null || grain === null ? null : usualCount(seconds, starts, grain);
  if (starts === null || grain === null || usual === null) return [];
  const runs = starts.length - 1;
  for (let run = 0; run < runs; run += 1) {
    const from = starts[run]!;
    const count = starts[run + 1]! - from;
    const isEnd = run === 0 || run === runs - 1;
    const step = grain / (isEnd ? Math.max(usual, count) : count);
    const late = run === 0 ? Math.max(0, usual - count) : 0;
    for (let at = 0; at < count; at += 1) seconds[from + at]! += (late + at) * step;
  }
  return [notice("stamps-spread", { perStamp: usual, seconds: grain / usual })];
};
