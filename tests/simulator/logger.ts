/** The thermometer or logger between the truth and the file. */
import type { Random } from "./random.ts";
import { isWithin, valueAt, type Spell, type Trace } from "./run.ts";
import { lagged } from "./thermal.ts";

export interface Logger {
  /** Reading minus truth, degC: the fault a person does not know. */
  readonly error: number;
  /** What `error` gains per degC above 40 degC; none where left out. */
  readonly scale?: number;
  readonly lagSeconds: number;
  readonly noise: number;
  readonly resolution: number;
  /** Null for readings taken by hand at uneven times. */
  readonly intervalSeconds: number | null;
  /** How the person can describe the thermometer: options of the command. */
  readonly statement: readonly string[];
  readonly lostShare: number;
  readonly gap: boolean;
  readonly glitches: number;
  readonly faults: readonly number[];
}

export function sampleLogger(random: Random): Logger {
  const byHand = random.chance(0.08);
  return {
    ...sampleError(random),
    lagSeconds: random.logUniform(5, 300),
    noise: random.chance(0.15) ? 0 : random.uniform(0, 0.15),
    resolution: byHand ? random.choice([0.1, 0.5]) : random.choice(resolutions),
    intervalSeconds: byHand ? null : random.weighted(intervals),
    lostShare: random.chance(0.12) && !byHand ? random.uniform(0.001, 0.04) : 0,
    gap: random.chance(0.05) && !byHand,
    glitches: random.chance(0.12) && !byHand ? random.integer(1, 5) : 0,
    faults: random.chance(0.1) && !byHand ? sampleFaults(random) : [],
  };
}

const resolutions = [0.01, 0.01, 0.05, 0.0625, 0.1, 0.1, 0.1, 0.25, 0.5];
const intervals: readonly (readonly [number, number])[] = [
  [1, 3],
  [2, 4],
  [5, 8],
  [10, 14],
  [15, 6],
  [30, 15],
  [60, 25],
  [120, 10],
  [300, 10],
  [600, 5],
];

/** Either an accuracy +-A (rectangular) or a correction with its standard uncertainty. */
function sampleError(random: Random): Pick<Logger, "error" | "statement"> {
  if (random.chance(0.75)) {
    const accuracy = random.choice([0.1, 0.2, 0.3, 0.5, 0.5, 1]);
    const error = random.uniform(-accuracy, accuracy);
    return { error, statement: ["--thermometer-accuracy", String(accuracy)] };
  }
  const correction = Number(random.normal(0, 0.6).toFixed(2));
  const uncertainty = random.choice([0.05, 0.1, 0.2, 0.3]);
  return {
    error: -correction + random.normal(0, uncertainty),
    statement: [`--correction=${correction}`, "--correction-uncertainty", String(uncertainty)],
  };
}

/** One sort of fault code a few times over; NaN stands for a word in the cell. */
const sampleFaults = (random: Random): readonly number[] =>
  Array.from({ length: random.integer(1, 6) }).fill(random.choice([85, -127, NaN])) as number[];

/** Times of the readings, seconds from switch-on; the first is always there. */
export function readingTimes(
  random: Random,
  logger: Logger,
  from: number,
  to: number,
): Float64Array {
  if (logger.intervalSeconds === null) return handTimes(random, from, to);
  const count = Math.max(2, Math.floor((to - from) / logger.intervalSeconds) + 1);
  const gapFrom = logger.gap ? random.uniform(0.3, 0.8) : 2;
  const gapTo = gapFrom + random.uniform(0.01, 0.06);
  const times: number[] = [];
  for (let index = 0; index < count; index += 1) {
    const lost = random.chance(logger.lostShare);
    const inGap = index / count > gapFrom && index / count < gapTo;
    if (index === 0 || !(lost || inGap)) times.push(from + index * logger.intervalSeconds);
  }
  return Float64Array.from(times);
}

/** Six to twelve looks at the thermometer, to the minute, the last at the end. */
function handTimes(random: Random, from: number, to: number): Float64Array {
  const looks = random.integer(6, 12);
  const times = new Set([from, from + Math.floor((to - from) / 60) * 60]);
  while (times.size < looks) times.add(from + Math.floor(((to - from) * random.next()) / 60) * 60);
  return Float64Array.from(times).toSorted();
}

/** What the probe itself shows, before the logger's faults: the food, or the room's air while it is out. */
export function probeCourse(
  trace: Trace,
  medium: Float64Array,
  lagSeconds: number,
  out: readonly Spell[],
): Float64Array {
  const shown = new Float64Array(medium.length);
  let value = medium[0]!;
  for (let index = 0; index < medium.length; index += 1) {
    const isOut = isWithin(out, trace.fromSeconds + index * trace.stepSeconds);
    const around = isOut ? trace.room[index]! : medium[index]!;
    // A probe follows still air several times more slowly than water (no source: common practice).
    value = lagged(value, around, isOut ? 60 + 2 * lagSeconds : lagSeconds, trace.stepSeconds);
    shown[index] = value;
  }
  return shown;
}

/** Readings of one probe; NaN where the cell holds a word instead of a number. */
export function readings(
  random: Random,
  logger: Logger,
  trace: Trace,
  shown: Float64Array,
  times: Float64Array,
): Float64Array {
  const result = times.map((time) => {
    const shownThen = valueAt(trace, shown, time);
    const value = shownThen + logger.error + random.normal(0, logger.noise);
    return rounded(value + (logger.scale ?? 0) * (shownThen - 40), logger.resolution);
  });
  // Glitches come per reading: never more than one in fifty, and one.
  const most = 1 + Math.floor(result.length / 50);
  for (let count = 0; count < Math.min(most, logger.glitches); count += 1) {
    const leap = random.uniform(3, 20) * (random.chance(0.5) ? 1 : -1);
    const at = inner(random, result.length);
    result[at] = rounded(result[at]! + leap, logger.resolution);
  }
  for (const fault of logger.faults) result[inner(random, result.length)] = fault;
  return result;
}

const inner = (random: Random, length: number): number => random.integer(1, length - 2);

const rounded = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(4));
