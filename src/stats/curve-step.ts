import { type CurveJacobian, type CurveModel, jacobianColumns } from "./curve-jacobian.ts";
import { type Columns, solveUpper, triangularise } from "./householder.ts";

export interface CurveProblem {
  readonly model: CurveModel;
  /** Derivatives with respect to the parameters; central differences where absent. */
  readonly jacobian?: CurveJacobian;
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
  readonly start: readonly number[];
  /** Relative, as 1/variance; all alike where absent. */
  readonly weights?: ArrayLike<number>;
  readonly maxIterations?: number;
}

/** Parameters with their weighted residuals y - model. */
export interface Point {
  readonly parameters: readonly number[];
  readonly residuals: Float64Array;
  readonly squares: number;
}

export const pointAt = (problem: CurveProblem, parameters: readonly number[]): Point => {
  const { model, x, y, weights } = problem;
  const residuals = new Float64Array(x.length);
  let squares = 0;
  for (let i = 0; i < x.length; i++) {
    const weight = weights === undefined ? 1 : weights[i]!;
    const residual = weight > 0 ? Math.sqrt(weight) * (y[i]! - model(parameters, x[i]!)) : 0;
    residuals[i] = residual;
    squares += residual * residual;
  }
  return { parameters, residuals, squares: Number.isFinite(squares) ? squares : Infinity };
};

/** The problem made linear at a point: R and Q'r of the weighted Jacobian. */
export interface Linearised {
  readonly triangle: Columns;
  readonly right: Float64Array;
  readonly norms: readonly number[];
}

export const linearise = (problem: CurveProblem, point: Point): Linearised | null => {
  const { model, jacobian, x, weights } = problem;
  const columns = jacobianColumns(model, jacobian, point.parameters, x);
  if (weights !== undefined) {
    for (const column of columns) {
      for (let i = 0; i < column.length; i++) {
        column[i] = weights[i]! > 0 ? column[i]! * Math.sqrt(weights[i]!) : 0;
      }
    }
  }
  const norms = columns.map(norm);
  if (!norms.every(Number.isFinite)) return null;
  const right = point.residuals.slice();
  triangularise(columns, right);
  const size = columns.length;
  return {
    triangle: columns.map((column) => column.slice(0, size)),
    right: right.slice(0, size),
    norms,
  };
};

export const norm = (values: ArrayLike<number>): number => {
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += values[i]! * values[i]!;
  return Math.sqrt(squares);
};

/** Step of least |R s - right|^2 + damping |D s|^2, D the scales. */
export const dampedStep = (
  line: Linearised,
  scales: readonly number[],
  damping: number,
): Float64Array => {
  const size = scales.length;
  const columns = line.triangle.map((column, j) => {
    const tall = new Float64Array(2 * size);
    tall.set(column);
    tall[size + j] = Math.sqrt(damping) * scales[j]!;
    return tall;
  });
  const right = new Float64Array(2 * size);
  right.set(line.right);
  triangularise(columns, right);
  return solveUpper(columns, right);
};

/** Fall of the sum of squares that the linear picture promises (More 1978, eq. 4.4). */
export const promisedFall = (
  line: Linearised,
  scales: readonly number[],
  damping: number,
  step: Float64Array,
): number => {
  const size = step.length;
  const change = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    for (let i = 0; i <= j; i++) change[i]! += line.triangle[j]![i]! * step[j]!;
  }
  return norm(change) ** 2 + 2 * damping * norm(step.map((s, j) => s * scales[j]!)) ** 2;
};
