import type { Course } from "./course.ts";
import { lagResiduals, type LagProblem } from "./lag-residuals.ts";
import { lagScatter } from "./lag-scatter.ts";
import { lagSensitivity, type LagSensitivity, lagShift } from "./lag-sensitivity.ts";

/** What the readings themselves do not show. */
export interface LagDoubts {
  /** Display steps of bath and food together, root of the sum of squares, degC. */
  readonly resolution: number;
  /** Standard deviation of what a room nobody measured does to the food, degC; 0 where it was measured. */
  readonly unseenRoom: number;
}

/**
 * Probes have a lag of their own, seconds to a minute in water; that of two
 * probes differs by about this much (an assumption), minutes.
 */
const probesDiffer = 0.1;

/**
 * Standard uncertainty of the fitted lag, minutes: scatter of the residuals,
 * rounding, the bath between its readings, a room nobody measured, and the
 * probes' own lags, added in quadrature (JCGM 100, 5.1.2).
 */
export const lagUncertainty = (problem: LagProblem, lag: number, doubts: LagDoubts): number => {
  const sensitivity = lagSensitivity(problem, lag);
  const { minutes, celsius } = problem.food;
  return Math.hypot(
    lagScatter(sensitivity),
    roundingPart(sensitivity, celsius, doubts.resolution),
    betweenReadings(problem, lag, sensitivity),
    roomPart(sensitivity, minutes, doubts.unseenRoom),
    probesDiffer,
  );
};

/**
 * Rounding errors are one and the same for as long as a reading stays within
 * half a step, and independent from then on; each is d / sqrt(12).
 */
const roundingPart = (
  { slope, steepness }: LagSensitivity,
  celsius: Float64Array,
  resolution: number,
): number => {
  let [squares, sum, level] = [0, 0, NaN];
  for (let i = 0; i < slope.length; i += 1) {
    if (!(Math.abs(celsius[i]! - level) < resolution / 2)) {
      squares += sum ** 2;
      [sum, level] = [0, celsius[i]!];
    }
    sum += slope[i]!;
  }
  squares += sum ** 2;
  return (resolution * Math.sqrt(squares / 12)) / steepness;
};

/**
 * What the bath did between its readings nobody saw. Leaving out every second
 * reading moves the lag by that error once (where the bath has kinks) to three
 * times (where it is smooth, the error growing with the square of the
 * interval); taken as twice.
 */
const betweenReadings = (problem: LagProblem, lag: number, sensitivity: LagSensitivity): number => {
  const moved = [0, 1].map((phase) => {
    const coarser = lagResiduals({ ...problem, bath: everySecond(problem.bath, phase) }, lag);
    return lagShift(
      sensitivity,
      coarser.map((value, i) => value - sensitivity.residuals[i]!),
    );
  });
  return Math.hypot(...moved) / Math.SQRT2 / 2;
};

const everySecond = ({ minutes, celsius }: Course, phase: number): Course => {
  const kept = (_: number, index: number): boolean =>
    index % 2 === phase || index === 0 || index === minutes.length - 1;
  return { minutes: minutes.filter(kept), celsius: celsius.filter(kept) };
};

/** A room's day, and its quicker changes at a third of that (an assumption), minutes. */
const roomWaves = [
  { period: 1440, share: 1 },
  { period: 480, share: 1 / 3 },
] as const;

/** A wave of unknown phase has this standard deviation in its cosine and in its sine. */
const roomPart = (sensitivity: LagSensitivity, minutes: Float64Array, unseen: number): number => {
  if (unseen === 0) return 0;
  const shifts = roomWaves.flatMap(({ period, share }) =>
    [Math.cos, Math.sin].map((wave) => {
      const error = minutes.map((minute) => wave((2 * Math.PI * minute) / period));
      return share * unseen * lagShift(sensitivity, error);
    }),
  );
  return Math.hypot(...shifts);
};
