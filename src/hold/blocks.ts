import { median } from "../stats/median.ts";
import type { Points } from "./grid.ts";
import type { Stretch } from "../stats/time-weights.ts";

/** Block length aimed at, minutes: longer than the slowest thermostat cycle (90 min). */
const blockMinutes = 100;
const mostBlocks = 16;
/** Fewest points in a block for its extremes to mean something. */
export const blockPoints = 5;

/** One piece of the hold: its middle time, median, and extremes after light smoothing, degC less the course. */
export interface Block {
  readonly time: number;
  readonly middle: number;
  readonly low: number;
  readonly high: number;
}

/** Indices of the undisturbed points inside a stretch. */
export const undisturbedInside = (
  points: Points,
  core: Stretch,
  disturbed: Uint8Array,
): number[] => {
  const picked: number[] = [];
  for (let index = 0; index < points.minutes.length; index += 1) {
    const minute = points.minutes[index]!;
    if (minute >= core.from && minute <= core.to && disturbed[index] === 0) picked.push(index);
  }
  return picked;
};

/** How many blocks a stretch with so many points is cut into. */
export const blockCount = (core: Stretch, points: number): number =>
  Math.max(
    3,
    Math.min(
      mostBlocks,
      Math.floor((core.to - core.from) / blockMinutes),
      Math.floor(points / blockPoints),
    ),
  );

/** A temperature to compare with, degC at a minute. */
export type Course = (minute: number) => number;
export const flat: Course = () => 0;

/** Medians and extremes per block, of the points less a course. */
export const blocksOf = (
  points: Points,
  picked: readonly number[],
  core: Stretch,
  count: number,
  course: Course,
): Block[] => {
  const members: number[][] = Array.from({ length: count }, () => []);
  const width = (core.to - core.from) / count || 1;
  for (const index of picked) {
    const block = Math.min(count - 1, Math.floor((points.minutes[index]! - core.from) / width));
    members[block]!.push(index);
  }
  return members
    .filter((block) => block.length > 0)
    .map((block) => {
      const values = block.map((index) => points.celsius[index]! - course(points.minutes[index]!));
      const times = block.map((index) => points.minutes[index]!);
      const smooth = values.length < blockPoints ? values : smoothed(times, values);
      const time = block.reduce((sum, index) => sum + points.minutes[index]!, 0) / block.length;
      return { time, middle: median(values), low: Math.min(...smooth), high: Math.max(...smooth) };
    });
};

/** Reach of the smoothing against noise, minutes: it halves the noise of readings by the minute and hardly touches a 5-minute cycle. */
export const smoothing = 1.5;

/** Running mean of three where the three lie close together; sparse readings are cycles rather than noise. */
const smoothed = (times: readonly number[], values: readonly number[]): number[] => {
  const means: number[] = [];
  for (let index = 1; index < values.length - 1; index += 1) {
    const close = times[index + 1]! - times[index - 1]! <= 2 * smoothing + 1e-6;
    const three = values[index - 1]! + values[index]! + values[index + 1]!;
    means.push(close ? three / 3 : values[index]!);
  }
  return means;
};
