import { cholesky, solveLower } from "./cholesky.ts";

/** Observations y = X b + noise, and coefficients drawn towards a centre. */
export interface PenalisedProblem {
  /** One per observation, one entry per coefficient. */
  readonly rows: readonly ArrayLike<number>[];
  readonly y: ArrayLike<number>;
  /** Relative precision of each observation. */
  readonly weights: ArrayLike<number>;
  readonly centre: readonly number[];
  /** How strongly each coefficient is held there. 0: not at all. Infinity: fixed. */
  readonly precision: readonly number[];
}

export interface PenalisedFit {
  readonly coefficients: Float64Array;
  /** Inverse of X'WX + diag(precision), row-major; zero in rows and columns of fixed coefficients. */
  readonly inverse: Float64Array;
  /** The sum at its least: of the residuals and of the coefficients' distance from the centre. */
  readonly squares: number;
}

/** Sum of products over the first array's length. */
export const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
};

/** A symmetric row-major matrix times a vector. */
export const timesVector = (matrix: Float64Array, vector: ArrayLike<number>): Float64Array => {
  const size = vector.length;
  return Float64Array.from({ length: size }, (_, j) =>
    dot(vector, matrix.subarray(j * size, (j + 1) * size)),
  );
};

/** X'WX + diag(precision) of the free coefficients; the lower triangle. */
const normalMatrix = (problem: PenalisedProblem, free: readonly number[]): Float64Array => {
  const { rows, weights, precision } = problem;
  const matrix = new Float64Array(free.length ** 2);
  free.forEach((j, a) => {
    for (let b = 0; b <= a; b += 1) {
      let sum = a === b ? precision[j]! : 0;
      for (let i = 0; i < rows.length; i += 1) {
        sum += weights[i]! * rows[i]![j]! * rows[i]![free[b]!]!;
      }
      matrix[a * free.length + b] = sum;
    }
  });
  return matrix;
};

const unit = (size: number, at: number): Float64Array => {
  const vector = new Float64Array(size);
  vector[at] = 1;
  return vector;
};

/** The inverse as K'K, K the inverse of the Cholesky factor, so that it is symmetric to the bit. */
const inverseOf = (problem: PenalisedProblem): Float64Array | null => {
  const free = [...problem.centre.keys()].filter((j) => problem.precision[j] !== Infinity);
  const lower = cholesky(normalMatrix(problem, free), free.length);
  if (lower === null) return null;
  const columns = free.map((_, a) => solveLower(lower, free.length, unit(free.length, a)));
  const size = problem.centre.length;
  const inverse = new Float64Array(size * size);
  free.forEach((j, a) => {
    free.forEach((k, b) => (inverse[j * size + k] = dot(columns[a]!, columns[b]!)));
  });
  return inverse;
};

const residuals = ({ rows, y }: PenalisedProblem, coefficients: Float64Array): Float64Array =>
  Float64Array.from(rows, (row, i) => y[i]! - dot(coefficients, row));

/** Half the sum's downward slope: zero at the solution. Of a fixed coefficient it is never used. */
const slope = (problem: PenalisedProblem, coefficients: Float64Array): Float64Array => {
  const { rows, weights, centre, precision } = problem;
  const left = residuals(problem, coefficients);
  return Float64Array.from(coefficients, (b, j) => {
    let sum = b === centre[j] ? 0 : precision[j]! * (centre[j]! - b);
    for (let i = 0; i < rows.length; i += 1) sum += weights[i]! * rows[i]![j]! * left[i]!;
    return sum;
  });
};

const sumOfSquares = (problem: PenalisedProblem, coefficients: Float64Array): number => {
  const { weights, centre, precision } = problem;
  let sum = 0;
  residuals(problem, coefficients).forEach((left, i) => (sum += weights[i]! * left * left));
  coefficients.forEach((b, j) => {
    if (b !== centre[j]) sum += precision[j]! * (b - centre[j]!) ** 2;
  });
  return sum;
};

/** The first step from the centre solves it; the others take back the digits the inverse lost. */
const steps = 4;

/**
 * Least squares with a quadratic penalty (ridge regression about a centre, one
 * precision for each coefficient): the b with the least sum w (y - X b)^2 +
 * sum precision (b - centre)^2.
 *
 * Method: normal equations by Cholesky decomposition, solved for the distance
 * from the centre, with iterative refinement (Golub & Van Loan, Matrix
 * Computations). Squares are only ever added. Smallest sample: none, where
 * every precision is above 0. null where the data leave a coefficient open
 * that nothing holds.
 */
export const penalisedLeastSquares = (problem: PenalisedProblem): PenalisedFit | null => {
  const inverse = inverseOf(problem);
  if (inverse === null) return null;
  const coefficients = Float64Array.from(problem.centre);
  for (let step = 0; step < steps; step += 1) {
    timesVector(inverse, slope(problem, coefficients)).forEach((by, j) => (coefficients[j]! += by));
  }
  return { coefficients, inverse, squares: sumOfSquares(problem, coefficients) };
};
