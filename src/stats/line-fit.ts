import { weightedMean } from "./weighted.ts";

/**
 * A straight line y = intercept + slope x by least squares. Units: those of y,
 * per unit of x for the slope. `covariance` is that of intercept and slope;
 * `centre` is the weighted mean of x, where the line is known best, with
 * `centreUncertainty` the standard uncertainty of the line there.
 */
export interface LineFit {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptUncertainty: number;
  readonly slopeUncertainty: number;
  readonly covariance: number;
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly residualSumOfSquares: number;
  readonly centre: number;
  readonly centreUncertainty: number;
}

interface Sums {
  count: number;
  weight: number;
  xx: number;
  xy: number;
}

const centredSums = (
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  weights: ArrayLike<number>,
  centre: number,
  height: number,
): Sums => {
  const sums = { count: 0, weight: 0, xx: 0, xy: 0 };
  for (let i = 0; i < x.length; i++) {
    const w = weights[i]!;
    if (!(w > 0)) continue;
    const dx = x[i]! - centre;
    sums.count += 1;
    sums.weight += w;
    sums.xx += w * dx * dx;
    sums.xy += w * dx * (y[i]! - height);
  }
  return sums;
};

/**
 * Fits a line by ordinary or weighted least squares (JCGM 100, H.3), centred
 * on the means so that large x cost no digits. `weights` are relative, as
 * 1/variance; readings without weight do not count. Uncertainties come from
 * the residuals, n - 2 degrees of freedom: they assume independent residuals
 * (see `slopeUncertaintyAutocorrelated`).
 *
 * Smallest sample: 2 for the line, 3 for its uncertainties (NaN below);
 * slope and intercept are NaN where all x are equal.
 */
export const fitLine = (
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  weights: ArrayLike<number> = new Float64Array(x.length).fill(1),
): LineFit => {
  const centre = weightedMean(x, weights);
  const height = weightedMean(y, weights);
  const sums = centredSums(x, y, weights, centre, height);
  const slope = sums.count >= 2 && sums.xx > 0 ? sums.xy / sums.xx : NaN;
  let squares = 0;
  for (let i = 0; i < x.length; i++) {
    const w = weights[i]!;
    if (w > 0) squares += w * (y[i]! - height - slope * (x[i]! - centre)) ** 2;
  }
  return assemble(slope, centre, height, sums, squares);
};

const assemble = (
  slope: number,
  centre: number,
  height: number,
  sums: Sums,
  squares: number,
): LineFit => {
  const degreesOfFreedom = Math.max(0, sums.count - 2);
  const variance = degreesOfFreedom > 0 ? squares / degreesOfFreedom : NaN;
  const slopeVariance = variance / sums.xx;
  const centreVariance = variance / sums.weight;
  return {
    intercept: height - slope * centre,
    slope,
    interceptUncertainty: Math.sqrt(centreVariance + centre * centre * slopeVariance),
    slopeUncertainty: Math.sqrt(slopeVariance),
    covariance: -centre * slopeVariance,
    residualStandardDeviation: Math.sqrt(variance),
    degreesOfFreedom,
    residualSumOfSquares: squares,
    centre,
    centreUncertainty: Math.sqrt(centreVariance),
  };
};

/** A value of the fitted line with its standard uncertainty. */
export interface LinePrediction {
  readonly value: number;
  readonly standardUncertainty: number;
}

/**
 * The line's value at `x` with the standard uncertainty of the line there, the
 * covariance of intercept and slope heeded (JCGM 100, H.3.3). For one new
 * reading add the residual standard deviation in quadrature.
 */
export const predictLine = (fit: LineFit, x: number): LinePrediction => {
  const away = x - fit.centre;
  return {
    value: fit.intercept + fit.slope * x,
    standardUncertainty: Math.hypot(fit.centreUncertainty, away * fit.slopeUncertainty),
  };
};
