import { lagResiduals, type LagProblem, sumOfSquares } from "./lag-residuals.ts";

/** Lags looked at, minutes: what water in a jar of any size does. */
export const lagRange = { low: 0.2, high: 1440 } as const;

const gridPoints = 31;
const goldenSection = (Math.sqrt(5) - 1) / 2;
/** Relative width at which the search ends: far below any lag's uncertainty. */
const closeEnough = 1e-4;

export interface FoundLag {
  readonly lag: number;
  /** Residual sums of squares: there, and at the likelier end of the range, degC^2. */
  readonly squares: number;
  readonly squaresAtEnd: number;
}

/**
 * The lag with the smallest residual sum of squares: the best of a grid even
 * in the logarithm, then golden-section search between its neighbours.
 *
 * @returns null where that lies at an end of the range
 */
export const searchLag = (problem: LagProblem): FoundLag | null => {
  const squaresAt = (logLag: number): number =>
    sumOfSquares(lagResiduals(problem, Math.exp(logLag)));
  const from = Math.log(lagRange.low);
  const step = (Math.log(lagRange.high) - from) / (gridPoints - 1);
  const grid = Array.from({ length: gridPoints }, (_, point) => squaresAt(from + point * step));
  const best = grid.reduce((at, value, point) => (value < grid[at]! ? point : at), 0);
  if (best === 0 || best === gridPoints - 1) return null;
  const logLag = goldenMinimum(squaresAt, from + (best - 1) * step, from + (best + 1) * step);
  return {
    lag: Math.exp(logLag),
    squares: squaresAt(logLag),
    squaresAtEnd: Math.min(grid[0]!, grid.at(-1)!),
  };
};

const goldenMinimum = (f: (x: number) => number, from: number, to: number): number => {
  let [low, high] = [from, to];
  let [left, right] = [high - goldenSection * (high - low), low + goldenSection * (high - low)];
  let [atLeft, atRight] = [f(left), f(right)];
  while (high - low > closeEnough) {
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - goldenSection * (high - low);
      atLeft = f(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + goldenSection * (high - low);
      atRight = f(right);
    }
  }
  return (low + high) / 2;
};
