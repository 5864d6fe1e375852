import { autocorrelations } from "../stats/autocorrelation.ts";
import { lagParameters, sumOfSquares } from "./lag-residuals.ts";
import type { LagSensitivity } from "./lag-sensitivity.ts";

/** Beyond this share of the readings autocorrelations are mostly chance. */
const longestLagShare = 0.25;

/**
 * Standard uncertainty of the lag from the residuals' scatter, minutes:
 *
 *   u^2 = s^2 sum_k r_k D_k / D_0^2
 *
 * with r the residuals' autocorrelations up to where they first vanish and D_k
 * the lagged products of the slope (least squares under correlated errors:
 * Hamilton 1994, Time Series Analysis, 8.2). s^2 is the residuals' variance, or
 * that where the lag is read off, if larger (White 1980): a warm-up that fits
 * worse than the long hold after it must not hide behind it.
 */
export const lagScatter = (sensitivity: LagSensitivity): number => {
  const { residuals, slope, steepness } = sensitivity;
  const count = residuals.length;
  const weighted = sumOfSquares(residuals.map((value, i) => value * slope[i]!)) / steepness;
  const variance =
    Math.max(sumOfSquares(residuals) / count, weighted) * (count / (count - lagParameters));
  return Math.sqrt((variance * correlationFactor(sensitivity)) / steepness);
};

/** By how much correlated residuals make the lag's variance larger than independent ones, at least 1. */
const correlationFactor = ({ residuals, slope, steepness }: LagSensitivity): number => {
  const correlations = autocorrelations(residuals, residuals.length * longestLagShare);
  let factor = 1;
  for (let k = 1; k < correlations.length && correlations[k]! > 0; k += 1) {
    let products = 0;
    for (let i = k; i < slope.length; i += 1) products += slope[i]! * slope[i - k]!;
    factor += (2 * correlations[k]! * products) / steepness;
  }
  return Math.max(1, factor);
};
