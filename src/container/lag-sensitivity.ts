import { lagResiduals, type LagProblem, sumOfSquares } from "./lag-residuals.ts";

/** How the fit lies about its best lag. */
export interface LagSensitivity {
  /** What the best lag leaves unexplained, degC. */
  readonly residuals: Float64Array;
  /** Change of each residual with the lag, the linear parameters fitted anew, degC per minute. */
  readonly slope: Float64Array;
  /** Sum of the slopes' squares: half the curvature of the sum of squares. */
  readonly steepness: number;
}

/** Step of the central difference, as a share of the lag. */
const differenceStep = 1e-3;

export const lagSensitivity = (problem: LagProblem, lag: number): LagSensitivity => {
  const step = lag * differenceStep;
  const above = lagResiduals(problem, lag + step);
  const below = lagResiduals(problem, lag - step);
  const slope = above.map((value, i) => (value - below[i]!) / (2 * step));
  return { residuals: lagResiduals(problem, lag), slope, steepness: sumOfSquares(slope) };
};

/** By how many minutes the lag moves, to first order, when the food's readings are off by `error` (degC). */
export const lagShift = ({ slope, steepness }: LagSensitivity, error: Float64Array): number => {
  let along = 0;
  for (let i = 0; i < slope.length; i += 1) along -= slope[i]! * error[i]!;
  return along / steepness;
};
