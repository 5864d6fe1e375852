import { dot, penalisedLeastSquares, timesVector } from "./penalised-least-squares.ts";

/**
 * What is held of a regression before its data: beta given sigma is normal
 * about `mean`, coefficients independent, and sigma^2 is scaled inverse
 * chi-square with `degreesOfFreedom` and `scale`^2.
 */
export interface RegressionPrior {
  readonly mean: readonly number[];
  /**
   * Standard deviations of the coefficients where the residual standard
   * deviation is `scale`; with another they grow and shrink with it.
   * Infinity: flat. 0: fixed at the mean.
   */
  readonly standardDeviation: readonly number[];
  /** Prior guess of the residual standard deviation, above 0, in units of y. */
  readonly scale: number;
  /**
   * How many observations that guess counts as. Infinity: sigma is known. 0 or
   * less: the guess counts for nothing; minus the number of flat coefficients
   * leaves the degrees of freedom of least squares.
   */
  readonly degreesOfFreedom: number;
}

/**
 * The regression after its data, of the prior's form: coefficient j is
 * Student's t about `coefficients[j]` with scale `scale` times the square root
 * of the factor's diagonal, and `degreesOfFreedom`.
 */
export interface Regression {
  readonly coefficients: Float64Array;
  /** V, row-major p x p: coefficients have covariance sigma^2 V given sigma; zero where fixed. */
  readonly covarianceFactor: Float64Array;
  /** Residual standard deviation, after; NaN where the degrees of freedom are not above 0. */
  readonly scale: number;
  readonly degreesOfFreedom: number;
}

/** What a regression expects at a row: Student's t with these scales. */
export interface RegressionPrediction {
  readonly mean: number;
  /** Scale of the t of the mean response. */
  readonly meanScale: number;
  /** Scale of the t of one more observation, of weight 1. */
  readonly scale: number;
  readonly degreesOfFreedom: number;
}

const posteriorScale = (prior: RegressionPrior, squares: number, observed: number): number => {
  if (prior.degreesOfFreedom === Infinity) return prior.scale;
  const degreesOfFreedom = prior.degreesOfFreedom + observed;
  const before = Math.max(0, prior.degreesOfFreedom) * prior.scale ** 2;
  return degreesOfFreedom > 0 ? Math.sqrt((before + squares) / degreesOfFreedom) : NaN;
};

/** A mistake of the caller's, not of the data. */
const demand = (condition: boolean, what: string): void => {
  if (!condition) throw new RangeError(`regression ${what}`);
};

const demandFit = (
  rows: readonly ArrayLike<number>[],
  { mean, standardDeviation, scale }: RegressionPrior,
  lengths: readonly number[],
): void => {
  demand(
    rows.every((row) => row.length === mean.length) &&
      lengths.every((length) => length === rows.length) &&
      standardDeviation.length === mean.length,
    "of arrays that do not fit together",
  );
  demand(scale > 0 && scale < Infinity, "prior with a scale that is not above 0 and finite");
  demand(
    standardDeviation.every((one) => one >= 0),
    "prior with a deviation below 0",
  );
};

const ones = (length: number): Float64Array => new Float64Array(length).fill(1);

/**
 * Linear regression y = X beta + noise of standard deviation sigma /
 * sqrt(weight), with a conjugate prior (normal, scaled inverse chi-square), in
 * closed form: L = X'WX + L0, m = m0 + L^-1 X'W(y - X m0), nu = nu0 + n,
 * nu s^2 = nu0 s0^2 + (y - Xm)'W(y - Xm) + (m - m0)'L0(m - m0). Gelman et al.,
 * Bayesian Data Analysis, chapter 14, and Bishop, Pattern Recognition and
 * Machine Learning, section 3.3 (both from memory).
 *
 * `rows`: one per observation, one entry per coefficient. `weights`: relative
 * precisions, not counts; an observation counts as one whatever its weight
 * above 0, and not at all with weight 0.
 *
 * Smallest sample: none, which gives the prior back. Throws RangeError where a
 * flat coefficient cannot be told from the data (proper priors never do), and
 * where the arrays or the prior are none.
 */
export const bayesianRegression = (
  rows: readonly ArrayLike<number>[],
  y: ArrayLike<number>,
  prior: RegressionPrior,
  weights: ArrayLike<number> = ones(rows.length),
): Regression => {
  demandFit(rows, prior, [y.length, weights.length]);
  const precision = prior.standardDeviation.map((one) => (prior.scale / one) ** 2);
  const fit = penalisedLeastSquares({ rows, y, weights, centre: prior.mean, precision });
  if (fit === null) throw new RangeError("regression flat where nothing was observed");
  const observed = rows.filter((_, i) => weights[i]! > 0).length;
  return {
    coefficients: fit.coefficients,
    covarianceFactor: fit.inverse,
    scale: posteriorScale(prior, fit.squares, observed),
    degreesOfFreedom: prior.degreesOfFreedom + observed,
  };
};

/**
 * What the regression expects at `row`: of the mean response, and of one more
 * observation there. Units of y.
 */
export const regressionPrediction = (
  fit: Regression,
  row: ArrayLike<number>,
): RegressionPrediction => {
  const { coefficients, covarianceFactor, scale, degreesOfFreedom } = fit;
  // Rounding alone may take it below 0, where the prediction is all but certain.
  const leverage = Math.max(0, dot(row, timesVector(covarianceFactor, row)));
  return {
    mean: dot(coefficients, row),
    meanScale: scale * Math.sqrt(leverage),
    scale: scale * Math.sqrt(1 + leverage),
    degreesOfFreedom,
  };
};

/**
 * How much each observation weighs in the mean predicted at `row`: d mean / d
 * y_i = w_i x' V x_i. The rest of the mean is the prior's. `rows` and `weights`
 * as they were fitted.
 */
export const observationWeights = (
  fit: Regression,
  rows: readonly ArrayLike<number>[],
  row: ArrayLike<number>,
  weights: ArrayLike<number> = ones(rows.length),
): Float64Array => {
  const pull = timesVector(fit.covarianceFactor, row);
  return Float64Array.from(rows, (one, i) => weights[i]! * dot(pull, one));
};
