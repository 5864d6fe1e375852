import { usualStep } from "../stats/time-weights.ts";

/** Readings thinned for finding phases: at most a few thousand points, unevenly spaced. */
export interface Points {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  /** Smallest step between readings, degC; 0 where unknown. */
  readonly resolution: number;
}

/** Width of a cell, minutes: phases are wanted to a few minutes, thermostats cycle in 5 or more. */
const finestCell = 1;
/** Most cells: a day and a half at one minute. */
const mostCells = 2200;

/**
 * Readings averaged into equal cells of time, for finding phases: linear time
 * however many readings there are. Each point carries the mean time and mean
 * temperature of its cell; empty cells leave no point. Readings sparser than
 * the cells come back as they are.
 */
export const workingPoints = (
  minutes: Float64Array,
  celsius: Float64Array,
  resolution: number,
): Points => {
  const count = minutes.length;
  if (count < 2) return { minutes, celsius, resolution };
  const start = minutes[0]!;
  const span = minutes[count - 1]! - start;
  const width = Math.max(finestCell, span / mostCells);
  const sparse = usualStep(minutes) > width * 0.75 && count <= 2 * mostCells;
  return { ...(sparse ? { minutes, celsius } : cells(minutes, celsius, width)), resolution };
};

const cells = (
  minutes: Float64Array,
  celsius: Float64Array,
  width: number,
): { minutes: Float64Array; celsius: Float64Array } => {
  const start = minutes[0]!;
  const size = Math.floor((minutes[minutes.length - 1]! - start) / width) + 1;
  const counts = new Float64Array(size);
  const times = new Float64Array(size);
  const values = new Float64Array(size);
  for (let index = 0; index < minutes.length; index += 1) {
    const cell = Math.floor((minutes[index]! - start) / width);
    counts[cell]! += 1;
    times[cell]! += minutes[index]!;
    values[cell]! += celsius[index]!;
  }
  let used = 0;
  for (let cell = 0; cell < size; cell += 1) {
    if (counts[cell] === 0) continue;
    times[used] = times[cell]! / counts[cell]!;
    values[used] = values[cell]! / counts[cell]!;
    used += 1;
  }
  if (used < 2) return { minutes, celsius };
  // The first and the last stand at the log's own borders, so that phases reach from end to end.
  times[0] = start;
  times[used - 1] = minutes[minutes.length - 1]!;
  return { minutes: times.slice(0, used), celsius: values.slice(0, used) };
};

/** Index of the first point at or after a minute; the last point where there is none. */
export const indexFrom = (minutes: Float64Array, minute: number): number => {
  let index = 0;
  while (index < minutes.length - 1 && minutes[index]! < minute) index += 1;
  return index;
};
