import { median, medianAbsoluteDeviation, scaledMad } from "../stats/median.ts";
import { marginalStandardErrorTruncation } from "../stats/truncation.ts";
import { approachedLevel, missingAt } from "./approach.ts";
import type { Approach } from "./approach.ts";
import { blockCount, blockPoints, blocksOf, flat, smoothing, undisturbedInside } from "./blocks.ts";
import type { Block, Course } from "./blocks.ts";
import type { Points } from "./grid.ts";
import type { Level } from "./level.ts";
import { readingNoise } from "./noise.ts";
import { usualStep } from "../stats/time-weights.ts";
import type { Stretch } from "../stats/time-weights.ts";

/**
 * Level and envelope of the points inside `core`, points marked in `disturbed`
 * left out. The stretch is cut into blocks about as long as the slowest
 * thermostat cycle; the level is the Theil-Sen line through the block medians
 * and the envelope the median of the blocks' extremes, so that neither one
 * lifted lid nor one odd cycle moves it.
 *
 * The slope is the smaller of those of the two halves (zero where their signs
 * differ): a drift is carried beyond the stretch only as far as both halves
 * agree on it, so the tail of an exponential approach is not taken for drift.
 *
 * @returns null for fewer than 3 points
 */
export const findLevel = (
  points: Points,
  stretch: Stretch,
  disturbed: Uint8Array,
): Level | null => {
  const all = undisturbedInside(points, stretch, disturbed);
  if (all.length < 3) return null;
  const trend = agreedSlope(blocksOf(points, all, stretch, blockCount(stretch, all.length), flat));
  const picked = withoutTransient(points, all, trend);
  const core = { from: points.minutes[picked[0]!]!, to: stretch.to };
  const count = blockCount(core, picked.length);
  const slope = agreedSlope(blocksOf(points, picked, core, count, flat)) || trend;
  const blocks = blocksOf(points, picked, core, count, (minute) => slope * minute);
  const intercept = median(blocks.map((block) => block.middle));
  const line = { intercept, slope, approach: null, noise: noiseOf(points, picked) };
  return { ...line, ...envelope(points, picked, core, (minute) => intercept + slope * minute) };
};

/** Fewest points for which looking for a transient makes sense. */
const transientPoints = 24;

/**
 * The points without an initial transient, found by the marginal standard
 * error rule (White 1997) with the trend taken out, which it would cut as well.
 */
const withoutTransient = (points: Points, picked: number[], trend: number): number[] => {
  if (picked.length < transientPoints) return picked;
  const batch = Math.max(1, Math.min(5, Math.floor(picked.length / transientPoints)));
  const values = picked.map((index) => points.celsius[index]! - trend * points.minutes[index]!);
  return picked.slice(marginalStandardErrorTruncation(values, batch));
};

/** Readings far apart that scatter by more, degC, do so by cycles between them: no logger is as bad. */
const mostNoise = 0.15;

/** Noise left by the blocks' smoothing, degC. A dozen readings do not show theirs. */
const noiseOf = (points: Points, picked: readonly number[]): number => {
  if (picked.length < 3 * blockPoints) return 0;
  const noise = readingNoise(points.celsius);
  if (usualStep(points.minutes) <= smoothing) return noise / Math.sqrt(3);
  return noise > mostNoise ? 0 : noise;
};

/** The same with an approach's curve in the line's place. */
export const levelOfApproach = (
  points: Points,
  core: Stretch,
  disturbed: Uint8Array,
  approach: Approach,
): Level => {
  const course = (minute: number): number =>
    approachedLevel(approach, minute) - missingAt(approach, minute);
  const picked = undisturbedInside(points, core, disturbed);
  const { slope, intercept } = approach;
  const noise = noiseOf(points, picked);
  return { intercept, slope, approach, noise, ...envelope(points, picked, core, course) };
};

const agreedSlope = (blocks: readonly Block[]): number => {
  if (blocks.length < 4) return 0;
  const half = blocks.length >> 1;
  const early = theilSlope(blocks.slice(0, blocks.length - half));
  const late = theilSlope(blocks.slice(half));
  if (early * late <= 0) return 0;
  return Math.abs(early) < Math.abs(late) ? early : late;
};

const theilSlope = (blocks: readonly Block[]): number => {
  const slopes: number[] = [];
  blocks.forEach((a, index) => {
    for (const b of blocks.slice(index + 1)) slopes.push((b.middle - a.middle) / (b.time - a.time));
  });
  return slopes.length === 0 ? 0 : median(slopes);
};

const envelope = (
  points: Points,
  picked: readonly number[],
  core: Stretch,
  course: Course,
): { low: number; high: number; variation: number } => {
  if (picked.length < 3 * blockPoints) {
    const offsets = picked.map((index) => points.celsius[index]! - course(points.minutes[index]!));
    const spread = 2 * scaledMad * medianAbsoluteDeviation(offsets, 0);
    return { low: -spread, high: spread, variation: spread / 2 };
  }
  const blocks = blocksOf(points, picked, core, blockCount(core, picked.length), course);
  const lows = blocks.map((block) => block.low);
  const highs = blocks.map((block) => block.high);
  const variation =
    scaledMad * Math.max(medianAbsoluteDeviation(lows), medianAbsoluteDeviation(highs));
  return { low: undisturbedLow(lows), high: median(highs), variation };
};

/** Upper quartile of the blocks' lowest: what breaks into a hold cools it, and may do so in half of a short night's blocks. */
const undisturbedLow = (lows: readonly number[]): number =>
  lows.toSorted((a, b) => b - a)[Math.floor((lows.length - 1) / 4)]!;
