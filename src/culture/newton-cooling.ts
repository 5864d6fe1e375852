import { compensatedSum } from "../stats/summary.ts";

/**
 * Cooling towards surroundings a: dT/dt = -k (T - a)^(1 + n). Newton's law is
 * n = 0: a stirred bath, moved air. In still air the heat-transfer coefficient
 * itself grows with the difference, in laminar free convection with its fourth
 * root, n = 0.25 (any text on heat transfer); steam from an open pot bends it
 * further.
 */
export interface CoolingLaw {
  /** degC. */
  readonly surroundings: number;
  /** n above; 0 or more. */
  readonly excess: number;
}

/** Readings of a cooling pot, thinned, each with its standard uncertainty, degC. */
export interface CoolingPoints {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  readonly uncertainty: Float64Array;
}

/** A straight line in the coordinate in which the law is one: u = atEnd - rate (t - end). */
export interface CoolingFit {
  readonly law: CoolingLaw;
  /** Minute of the last point. */
  readonly end: number;
  readonly atEnd: number;
  readonly rate: number;
  /** Of atEnd and rate, as the points' uncertainties give it. */
  readonly variance: { readonly atEnd: number; readonly rate: number; readonly both: number };
  readonly chiSquared: number;
  /** Mean square of the last quarter's residuals (three at least), in their uncertainties: large where the rate has just changed. */
  readonly late: number;
}

/** ln(T - a) for Newton's law, else (1 - (T - a)^-n) / n, which goes over into it. */
export const straightened = (celsius: number, { surroundings, excess }: CoolingLaw): number => {
  const above = celsius - surroundings;
  return excess === 0 ? Math.log(above) : (1 - above ** -excess) / excess;
};

/** The temperature with that coordinate: the inverse of `straightened`, degC. */
export const unstraightened = (value: number, { surroundings, excess }: CoolingLaw): number =>
  surroundings + (excess === 0 ? Math.exp(value) : (1 - excess * value) ** (-1 / excess));

/**
 * Weighted least squares of the straight line that the law is in its own
 * coordinate; exact for Newton's law, with uncertainties carried over by
 * du/dT = (T - a)^-(1 + n).
 *
 * @returns null with fewer than 3 points, or where a point does not lie above the surroundings
 */
export const fitCooling = (points: CoolingPoints, law: CoolingLaw): CoolingFit | null => {
  const { minutes, celsius, uncertainty } = points;
  const count = minutes.length;
  const end = minutes[count - 1] ?? 0;
  if (count < 3) return null;
  let [w, wx, wy, wxx, wxy] = [0, 0, 0, 0, 0];
  const values = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    const above = celsius[index]! - law.surroundings;
    if (above <= 0) return null;
    const x = end - minutes[index]!;
    const y = straightened(celsius[index]!, law);
    const weight = (above ** (1 + law.excess) / uncertainty[index]!) ** 2;
    values[index] = y;
    weights[index] = weight;
    w += weight;
    wx += weight * x;
    wy += weight * y;
    wxx += weight * x * x;
    wxy += weight * x * y;
  }
  const determinant = w * wxx - wx * wx;
  const rate = (w * wxy - wx * wy) / determinant;
  const atEnd = (wxx * wy - wx * wxy) / determinant;
  const squares = weights.map(
    (weight, index) => weight * (values[index]! - atEnd - rate * (end - minutes[index]!)) ** 2,
  );
  const latest = squares.subarray(-Math.max(3, count >> 2));
  return {
    law,
    end,
    atEnd,
    rate,
    variance: { atEnd: wxx / determinant, rate: w / determinant, both: -wx / determinant },
    chiSquared: compensatedSum(squares),
    late: compensatedSum(latest) / latest.length,
  };
};

/**
 * Minutes from the last point until the fitted curve comes down to `level`,
 * with their standard uncertainty to first order. Infinity where the
 * surroundings are no cooler, or the pot does not cool.
 */
export const minutesTo = (
  { law, atEnd, rate, variance }: CoolingFit,
  level: number,
): { readonly minutes: number; readonly standardUncertainty: number } => {
  if (level <= law.surroundings || rate <= 0)
    return { minutes: Infinity, standardUncertainty: Infinity };
  const minutes = (atEnd - straightened(level, law)) / rate;
  const spread = variance.atEnd + minutes * minutes * variance.rate - 2 * minutes * variance.both;
  return { minutes, standardUncertainty: Math.sqrt(Math.max(0, spread)) / rate };
};

/** Time constant at the last point, minutes: how long it would take at the present pace to lose all. */
export const timeConstantAtEnd = ({ law, atEnd, rate }: CoolingFit): number =>
  1 / (rate * (unstraightened(atEnd, law) - law.surroundings) ** law.excess);
