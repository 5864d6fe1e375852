import { hampel } from "../../stats/hampel.ts";

/** Readings on either side of one, and how many scaled deviations are too many. */
const halfWindow = 3;
const threshold = 3;
/** Least scaled deviation, degC: flat readings that step by their resolution are no spikes. */
const floor = 0.15;

/** A spike is at most so many readings. */
const longestRun = 2;
/** From the good reading before to the good one after, minutes: longer, and water may have moved. */
const longestSpan = 3;
/** Least leap, degC, and what a stirred jar may do and undo within each minute out and back. */
const leastLeap = 0.5;
const perMinute = 1;
/** Readings beside a leap that decide on it: two windows and the longest run. */
const margin = 2 * halfWindow + longestRun;
/** Share of the leap by which the reading after may differ from the one before. */
const returnShare = 0.25;

/** Whether readings first..last leap from their neighbours and come straight back. */
const isSpike = (
  minutes: Float64Array,
  celsius: Float64Array,
  first: number,
  last: number,
): boolean => {
  const before = celsius[first - 1]!;
  const after = celsius[last + 1]!;
  const span = minutes[last + 1]! - minutes[first - 1]!;
  const up = Math.min(celsius[first]!, celsius[last]!) - Math.max(before, after);
  const down = Math.min(before, after) - Math.max(celsius[first]!, celsius[last]!);
  const leap = Math.max(up, down);
  if (span > longestSpan || leap < leastLeap + perMinute * span) return false;
  return Math.abs(after - before) <= returnShare * leap;
};

/**
 * Marks (1) one or two readings that leap away and come straight back, faster
 * than water can: by the Hampel identifier (seven readings, three scaled
 * median absolute deviations) and by more than 0.5 degC + 1 degC a minute,
 * out and back within 3 minutes. So a lid lift, a warm-up, a thermostat's
 * swing and readings taken by hand are none; nor is a leap at either end of
 * the series, which is not seen to come back.
 *
 * Why the bounds: a jar that has leapt up must cool again, at most by
 * (jar - room) / time constant, about 1 degC a minute for a small jar (20
 * minutes, 20 degC apart); Newton's law of cooling, the figures are ours.
 * `minutes` increases; no NaN. Linear time.
 */
export const findSpikes = (minutes: Float64Array, celsius: Float64Array): Uint8Array => {
  const marks = new Uint8Array(celsius.length);
  let from = -1;
  let to = -1;
  for (let at = 1; at < celsius.length; at++) {
    if (!(Math.abs(celsius[at]! - celsius[at - 1]!) >= leastLeap)) continue;
    if (from < 0 || at - margin > to) {
      if (from >= 0) markWithin(minutes, celsius, marks, from, to);
      from = Math.max(0, at - margin);
    }
    to = Math.min(celsius.length, at + margin);
  }
  if (from >= 0) markWithin(minutes, celsius, marks, from, to);
  return marks;
};

/** Marks the spikes among readings from..to - 1. */
const markWithin = (
  allMinutes: Float64Array,
  allCelsius: Float64Array,
  allMarks: Uint8Array,
  from: number,
  to: number,
): void => {
  const minutes = allMinutes.subarray(from, to);
  const celsius = allCelsius.subarray(from, to);
  const marks = allMarks.subarray(from, to);
  const { flagged } = hampel(celsius, halfWindow, threshold, floor);
  for (let first = 1; first < celsius.length - 1; first++) {
    if (flagged[first] === 0 || flagged[first - 1] === 1) continue;
    let last = first;
    while (flagged[last + 1] === 1) last++;
    const enclosed = last < celsius.length - 1 && last - first < longestRun;
    if (enclosed && isSpike(minutes, celsius, first, last)) marks.fill(1, first, last + 1);
    first = last;
  }
};
