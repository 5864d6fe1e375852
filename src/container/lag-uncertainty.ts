import { autocorrelations } from "../stats/autocorrelation.ts";
import { lagParameters, lagResiduals, type LagProblem, sumOfSquares } from "./lag-residuals.ts";

/** Step of the central difference, as a share of the lag. */
const differenceStep = 1e-3;
/** Beyond this share of the readings autocorrelations are mostly chance. */
const longestLagShare = 0.25;

/**
 * Standard uncertainty of the fitted lag, minutes, from the curvature of the
 * sum of squares, with residuals that hang together in time heeded:
 *
 *   u^2 = sum_k gamma_k D_k / D_0^2
 *
 * gamma the residuals' autocovariances up to where they first vanish, D_k the
 * lagged products of the residuals' derivative by the lag (least squares under
 * correlated errors; Hamilton 1994, Time Series Analysis, 8.2). Never below
 * what independent residuals would give.
 */
export const lagUncertainty = (problem: LagProblem, lag: number): number => {
  const residuals = lagResiduals(problem, lag);
  const step = lag * differenceStep;
  const above = lagResiduals(problem, lag + step);
  const below = lagResiduals(problem, lag - step);
  const slope = above.map((value, i) => (value - below[i]!) / (2 * step));
  const steepness = sumOfSquares(slope);
  const variance = sumOfSquares(residuals) / (residuals.length - lagParameters);
  const inflation = correlationFactor(residuals, slope, steepness);
  return Math.sqrt((variance * inflation) / steepness);
};

/** By how much correlated residuals make the lag's variance larger than independent ones, at least 1. */
const correlationFactor = (
  residuals: Float64Array,
  slope: Float64Array,
  steepness: number,
): number => {
  const correlations = autocorrelations(residuals, residuals.length * longestLagShare);
  let factor = 1;
  for (let k = 1; k < correlations.length && correlations[k]! > 0; k += 1) {
    let products = 0;
    for (let i = k; i < slope.length; i += 1) products += slope[i]! * slope[i - k]!;
    factor += (2 * correlations[k]! * products) / steepness;
  }
  return Math.max(1, factor);
};
