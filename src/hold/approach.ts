import { solveApproach } from "./approach-solver.ts";
import type { ApproachData, ApproachSolution, LevelPrior } from "./approach-solver.ts";
import type { Points } from "./grid.ts";
import type { Stretch } from "../stats/time-weights.ts";

/**
 * An exponential approach to a slowly moving level: with x the minutes since
 * `from`, y = intercept + slope x + bend x^2 - amplitude e^(-x/timeConstant).
 */
export interface Approach {
  readonly from: number;
  readonly timeConstant: number;
  /** degC missing at `from`. */
  readonly amplitude: number;
  readonly intercept: number;
  readonly slope: number;
  readonly bend: number;
  /** What the curve leaves during the first three time constants (root mean square), degC. */
  readonly earlyResidual: number;
  /** What it leaves afterwards (robust standard deviation), degC; NaN where there is no afterwards. */
  readonly lateResidual: number;
}

/** Level being approached, degC at a minute of the log. */
export const approachedLevel = (approach: Approach, minute: number): number => {
  const since = minute - approach.from;
  return approach.intercept + approach.slope * since + approach.bend * since * since;
};

/** What is still missing of the level, degC. */
export const missingAt = (approach: Approach, minute: number): number =>
  approach.amplitude * Math.exp(-(minute - approach.from) / approach.timeConstant);

/** Minute from which no more than `within` degC are missing. */
export const arrivalWithin = (approach: Approach, within: number): number =>
  approach.from + approach.timeConstant * Math.log(Math.max(1, approach.amplitude / within));

const shortestConstant = 10;
const longestConstant = 500;
const constants = 36;
const mostFitted = 240;
/** A thermostat keeps its level; without one it follows the room through the night. */
const kept: LevelPrior = { slope: 0.05, bend: 0.003 };
const followsRoom: LevelPrior = { slope: 0.3, bend: 0.02 };
/** Only a slow approach, minutes, can be an appliance without a thermostat; a quick one with a moving level is an overshoot. */
const slowApproach = 45;
/** Gain in log likelihood for which the freer picture is believed. */
const leastGain = 6;
/** Slow departures from the curve (room, swing): their size, degC, and how long one lasts, minutes. */
const wander = 0.15;
const wanderMinutes = 40;

/**
 * Least-squares fit for a fixed-power heater or a slow jar: the time constant
 * over a logarithmic grid, the rest in closed form. Slope and bend of the
 * level carry priors, without which the tail of a slow approach and a drift
 * cannot be told apart on one night: those of a kept level, unless the
 * readings clearly ask for one that follows the room.
 *
 * @returns null with fewer than 8 points, or where the best time constant is
 * at the end of the grid (no approach, or one that has hardly begun)
 */
export const fitApproach = (
  points: Points,
  stretch: Stretch,
  disturbed: Uint8Array,
): Approach | null => {
  const data = pickData(points, stretch, disturbed);
  if (data === null) return null;
  const strict = bestTrial(data, kept);
  const free = bestTrial(data, followsRoom);
  if (strict === null || free === null) return null;
  const gain = (strict.solution.cost - free.solution.cost) / (2 * data.scale);
  const follows = gain > leastGain && free.constant > slowApproach;
  const { constant, solution, atEnd } = follows ? free : strict;
  if (atEnd) return null;
  return {
    from: stretch.from,
    timeConstant: constant,
    amplitude: solution.amplitude,
    intercept: solution.level,
    slope: solution.slope / 60,
    bend: solution.bend / 3600,
    earlyResidual: solution.earlyResidual,
    lateResidual: solution.lateResidual,
  };
};

const pickData = (points: Points, stretch: Stretch, disturbed: Uint8Array): ApproachData | null => {
  const inside: number[] = [];
  points.minutes.forEach((minute, index) => {
    const wanted = minute >= stretch.from && minute <= stretch.to && disturbed[index] === 0;
    if (wanted) inside.push(index);
  });
  const stride = Math.max(1, Math.ceil(inside.length / mostFitted));
  const picked = inside.filter((_, index) => index % stride === 0);
  if (picked.length < 8) return null;
  const times = Float64Array.from(picked, (index) => points.minutes[index]! - stretch.from);
  const values = Float64Array.from(picked, (index) => points.celsius[index]!);
  const independent = Math.max(2, times[times.length - 1]! / wanderMinutes);
  return { times, values, scale: (picked.length / independent) * wander ** 2 };
};

interface Trial {
  readonly constant: number;
  readonly solution: ApproachSolution;
  readonly atEnd: boolean;
}

const bestTrial = (data: ApproachData, prior: LevelPrior): Trial | null => {
  const coarse = bestOf(data, prior, shortestConstant, longestConstant, constants);
  if (coarse === null || coarse.atEnd) return coarse;
  const ratio = (longestConstant / shortestConstant) ** (1 / (constants - 1));
  const fine = bestOf(data, prior, coarse.constant / ratio, coarse.constant * ratio, 9);
  return fine === null ? coarse : { ...fine, atEnd: false };
};

/** Best of `count` time constants in geometric steps. */
const bestOf = (
  data: ApproachData,
  prior: LevelPrior,
  least: number,
  most: number,
  count: number,
): Trial | null => {
  let best: Trial | null = null;
  for (let index = 0; index < count; index += 1) {
    const constant = least * (most / least) ** (index / (count - 1));
    const solution = solveApproach(data, constant, prior);
    if (solution === null || (best !== null && solution.cost >= best.solution.cost)) continue;
    best = { constant, solution, atEnd: index === 0 || index === count - 1 };
  }
  return best;
};
