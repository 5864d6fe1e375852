import type { HoldReadings } from "./hold.ts";

/** Time against a window `low` .. `high`; minutes, and degC x h for the area outside. */
export interface DwellTimes {
  readonly insideFraction: number;
  readonly belowMinutes: number;
  readonly aboveMinutes: number;
  readonly longestOutsideMinutes: number;
  readonly degreeHoursOutside: number;
}

interface Tally {
  below: number;
  above: number;
  area: number;
  run: number;
  longest: number;
}

/**
 * Time inside, below and above a window over the hold, with the course between
 * neighbouring readings taken as a straight line, so that crossings fall where
 * the line crosses and the area outside is exact for it. Where a gap or a
 * disturbance lies between two readings nothing is drawn across: each stands
 * at its own value for the rest of its weight. All times together are the sum
 * of the weights.
 *
 * Neighbours are taken as joined where both have weight for half the interval
 * between them (see time-weights.ts). An empty hold gives a fraction of NaN.
 */
export const dwell = (readings: HoldReadings, low: number, high: number): DwellTimes => {
  const { minutes, celsius, weights } = readings;
  const tally: Tally = { below: 0, above: 0, area: 0, run: 0, longest: 0 };
  let total = 0;
  let joinedBefore = 0;
  for (let index = 0; index < minutes.length; index += 1) {
    const weight = weights[index]!;
    const half = halfInterval(readings, index);
    const joined = half <= weight - joinedBefore + 1e-9 ? half : 0;
    total += weight;
    addStraight(
      tally,
      celsius[index]!,
      celsius[index]!,
      Math.max(0, weight - joinedBefore - joined),
      low,
      high,
    );
    if (joined > 0) addStraight(tally, celsius[index]!, celsius[index + 1]!, 2 * joined, low, high);
    else endRun(tally);
    joinedBefore = joined;
  }
  endRun(tally);
  return {
    insideFraction:
      total > 0 ? Math.min(1, Math.max(0, 1 - (tally.below + tally.above) / total)) : NaN,
    belowMinutes: tally.below,
    aboveMinutes: tally.above,
    longestOutsideMinutes: tally.longest,
    degreeHoursOutside: tally.area / 60,
  };
};

/** Half the interval to the next reading where that one has weight for its half too; Infinity otherwise. */
const halfInterval = ({ minutes, weights }: HoldReadings, index: number): number => {
  if (index + 1 >= minutes.length) return Infinity;
  const half = (minutes[index + 1]! - minutes[index]!) / 2;
  return half <= weights[index + 1]! + 1e-9 ? half : Infinity;
};

const endRun = (tally: Tally): void => {
  tally.longest = Math.max(tally.longest, tally.run);
  tally.run = 0;
};

/** Adds a straight course from `a` to `b` lasting `duration` minutes. */
const addStraight = (
  tally: Tally,
  a: number,
  b: number,
  duration: number,
  low: number,
  high: number,
): void => {
  if (duration <= 0) return;
  const atLow = crossingShare(a, b, low);
  const atHigh = crossingShare(a, b, high);
  const first = Math.min(atLow, atHigh);
  const second = Math.max(atLow, atHigh);
  addPart(tally, a, b, 0, first, duration, low, high);
  addPart(tally, a, b, first, second, duration, low, high);
  addPart(tally, a, b, second, 1, duration, low, high);
};

/** The part of the straight course between two shares of it, with no crossing inside. */
const addPart = (
  tally: Tally,
  a: number,
  b: number,
  from: number,
  to: number,
  duration: number,
  low: number,
  high: number,
): void => {
  const part = (to - from) * duration;
  if (part > 0) addPiece(tally, a + (b - a) * ((from + to) / 2), part, low, high);
};

/** A piece that lies wholly on one side of each limit; its mean is its middle value. */
const addPiece = (tally: Tally, middle: number, part: number, low: number, high: number): void => {
  if (middle >= low && middle <= high) {
    endRun(tally);
    return;
  }
  if (middle < low) tally.below += part;
  else tally.above += part;
  tally.area += part * (middle < low ? low - middle : middle - high);
  tally.run += part;
};

/** Where, 0 to 1, the line from a to b meets the limit; 0 where it does not. */
const crossingShare = (a: number, b: number, limit: number): number => {
  if ((a - limit) * (b - limit) >= 0) return 0;
  return (limit - a) / (b - a);
};
