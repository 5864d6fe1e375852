import type { Course } from "./course.ts";

/**
 * At most about `most` readings: each the mean (of time and of temperature) of
 * as many neighbours as that takes, never over an interval longer than `limit`
 * minutes. A mean over a stretch is itself linear in the bath, so bath and food
 * thinned alike still follow one another with the same lag, as long as the
 * stretch is short beside it.
 */
export const thinned = (course: Course, most: number, limit: number): Course => {
  const size = Math.ceil(course.minutes.length / most);
  if (size <= 1) return course;
  const starts = groupStarts(course.minutes, size, limit);
  const means = (values: Float64Array): Float64Array =>
    Float64Array.from(starts, (start, group) => {
      const end = starts[group + 1] ?? values.length;
      let sum = 0;
      for (let index = start; index < end; index += 1) sum += values[index]!;
      return sum / (end - start);
    });
  return { minutes: means(course.minutes), celsius: means(course.celsius) };
};

const groupStarts = (minutes: Float64Array, size: number, limit: number): readonly number[] => {
  const starts: number[] = [];
  let start = -Infinity;
  for (let index = 0; index < minutes.length; index += 1) {
    const apart = index > 0 && minutes[index]! - minutes[index - 1]! > limit;
    if (index - start < size && !apart) continue;
    start = index;
    starts.push(start);
  }
  return starts;
};
