import { cellWeights } from "../stats/time-weights.ts";

/** One probe's readings, or means of neighbouring ones: minutes rising, degC, of equal length. */
export interface Course {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
}

/** A stretch of time, minutes from the same zero as the readings. */
export interface Span {
  readonly fromMinute: number;
  readonly toMinute: number;
}

/** First index whose minute is at least `minute`. */
const firstAtOrAfter = (minutes: Float64Array, minute: number): number => {
  let low = 0;
  let high = minutes.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (minutes[middle]! < minute) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The readings of a stretch of time, both ends included; views, not copies. */
export const within = ({ minutes, celsius }: Course, { fromMinute, toMinute }: Span): Course => {
  const first = firstAtOrAfter(minutes, fromMinute);
  const after = firstAtOrAfter(minutes, toMinute);
  const last = minutes[after] === toMinute ? after + 1 : after;
  return { minutes: minutes.subarray(first, last), celsius: celsius.subarray(first, last) };
};

/** The readings that lie strictly inside none of the spans. */
export const outside = (course: Course, spans: readonly Span[]): Course => {
  if (spans.length === 0) return course;
  const kept = (_: number, index: number): boolean => {
    const minute = course.minutes[index]!;
    return !spans.some(({ fromMinute, toMinute }) => minute > fromMinute && minute < toMinute);
  };
  return { minutes: course.minutes.filter(kept), celsius: course.celsius.filter(kept) };
};

/** The gaps between readings longer than `limit` minutes. */
export const gapsOf = ({ minutes }: Course, limit: number): readonly Span[] => {
  const gaps: Span[] = [];
  for (let index = 1; index < minutes.length; index += 1) {
    const [fromMinute, toMinute] = [minutes[index - 1]!, minutes[index]!];
    if (toMinute - fromMinute > limit) gaps.push({ fromMinute, toMinute });
  }
  return gaps;
};

/**
 * Minutes each reading stands for: half-way to its neighbours, at the ends as
 * far as on the inner side, nowhere more than half of `limit` to either side.
 * Smallest sample: two readings.
 */
export const timeWeights = (minutes: Float64Array, limit: number): Float64Array => {
  const last = minutes.length - 1;
  const half = (after: number): number => (minutes[after]! - minutes[after - 1]!) / 2;
  const stretch = { from: minutes[0]! - half(1), to: minutes[last]! + half(last) };
  return cellWeights(minutes, 0, minutes.length, stretch, limit);
};
