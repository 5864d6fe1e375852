import { fitLine, predictLine } from "../stats/line-fit.ts";
import { compensatedSum } from "../stats/summary.ts";
import { weightedMean } from "../stats/weighted.ts";
import type { CheckPoint } from "./check-points.ts";

/** A correction line through check points; degC, readings along x. */
export interface CalibrationLine {
  /** Weighted mean of the readings. */
  readonly centre: number;
  /** Correction there, and its change per degC of reading. */
  readonly correction: number;
  readonly slope: number;
  readonly points: readonly LinePoint[];
  /** Points beyond the fitted parameters: 1 for an offset, 2 for a line. */
  readonly degreesOfFreedom: number;
}

export interface LinePoint {
  readonly point: CheckPoint;
  /** 1 / variance; all 1 where every stated uncertainty is zero (below 1e-12 degC). */
  readonly weight: number;
  /** Observed correction less the line's. */
  readonly residual: number;
  /** How much of an error in this point's correction reaches the line at its centre, and its slope. */
  readonly atCentre: number;
  readonly perDegree: number;
}

/** Least standard uncertainty counted in a weight, as a part of the largest: exact points cannot weigh infinitely. */
const leastPart = 1e-3;
/** Variance, degC^2, below which all points count as exact. */
const nothing = 1e-24;

const variance = ({ doubts }: CheckPoint, slope: number): number => {
  let sum = 0;
  for (const { of, standardUncertainty } of doubts)
    sum += (standardUncertainty * (of === "reading" ? 1 + slope : 1)) ** 2;
  return sum;
};

const weightsOf = (points: readonly CheckPoint[], slope: number): Float64Array => {
  const variances = Float64Array.from(points, (point) => variance(point, slope));
  const highest = variances.reduce((most, one) => Math.max(most, one), 0);
  if (highest < nothing) return variances.fill(1);
  return variances.map((one) => 1 / Math.max(one, highest * leastPart ** 2));
};

interface Level {
  readonly centre: number;
  readonly correction: number;
  readonly slope: number;
  readonly parameters: 1 | 2;
}

const assemble = (
  points: readonly CheckPoint[],
  weights: Float64Array,
  { centre, correction, slope, parameters }: Level,
): CalibrationLine => {
  const total = compensatedSum(weights);
  const spread = compensatedSum(
    points.map(({ reading }, i) => weights[i]! * (reading - centre) ** 2),
  );
  return {
    centre,
    correction,
    slope,
    degreesOfFreedom: points.length - parameters,
    points: points.map((point, i) => {
      const away = point.reading - centre;
      const weight = weights[i]!;
      return {
        point,
        weight,
        residual: point.truth - point.reading - correction - slope * away,
        atCentre: weight / total,
        perDegree: parameters === 1 ? 0 : (weight * away) / spread,
      };
    }),
  };
};

/**
 * The same correction for every reading: the weighted mean of the checks'
 * corrections. Smallest sample: one point.
 */
export const fitOffset = (points: readonly CheckPoint[]): CalibrationLine => {
  const weights = weightsOf(points, 0);
  const readings = points.map((point) => point.reading);
  const corrections = points.map((point) => point.truth - point.reading);
  return assemble(points, weights, {
    centre: weightedMean(readings, weights),
    correction: weightedMean(corrections, weights),
    slope: 0,
    parameters: 1,
  });
};

/** The slope enters the weights; it is near 1 for truth over reading, so this settles in a few. */
const mostPasses = 20;

/**
 * A straight line by weighted least squares of the correction over the reading,
 * as in JCGM 100, H.3. Errors of the readings count with the line's slope
 * (effective variance; Orear 1982, Am. J. Phys. 50, 912), so the fit is repeated
 * until the slope stays. Smallest sample: two points at different readings;
 * NaN where all readings are equal.
 */
export const fitCorrectionLine = (points: readonly CheckPoint[]): CalibrationLine => {
  const readings = points.map((point) => point.reading);
  const corrections = points.map((point) => point.truth - point.reading);
  let weights = weightsOf(points, 0);
  let fit = fitLine(readings, corrections, weights);
  for (let pass = 1; pass < mostPasses; pass++) {
    const before = fit.slope;
    weights = weightsOf(points, before);
    fit = fitLine(readings, corrections, weights);
    if (!(Math.abs(fit.slope - before) > 1e-15)) break;
  }
  return assemble(points, weights, {
    centre: fit.centre,
    correction: predictLine(fit, fit.centre).value,
    slope: fit.slope,
    parameters: 2,
  });
};
