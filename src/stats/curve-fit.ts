import {
  type CurveProblem,
  type Linearised,
  type Point,
  dampedStep,
  linearise,
  norm,
  pointAt,
  promisedFall,
} from "./curve-step.ts";
import { inverseOfNormal } from "./householder.ts";

/** `covariance` is in units of the parameters, rows and columns in their order. */
export interface CurveFit {
  readonly parameters: readonly number[];
  readonly standardUncertainties: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly residualSumOfSquares: number;
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/** State carried from one iteration to the next. */
interface Search {
  point: Point;
  scales: number[];
  damping: number;
  growth: number;
  lastStep: number;
  state: "searching" | "converged" | "stuck";
}

/**
 * First damping, in squared column lengths: a start far off must not leap onto
 * a plateau, and each good step divides it by up to ten.
 */
const cautiousStart = 100;

/** So close that the sum of squares no longer tells better from worse: rounding decides. */
const nearlyThere = 1e-11;

const tryStep = (problem: CurveProblem, search: Search, line: Linearised): boolean => {
  const { point, scales, damping } = search;
  const step = dampedStep(line, scales, damping);
  const promised = promisedFall(line, scales, damping, step);
  const trial = pointAt(
    problem,
    point.parameters.map((value, j) => value + step[j]!),
  );
  const length = norm(step.map((s, j) => s * scales[j]!));
  const size = norm(point.parameters.map((value, j) => value * scales[j]!));
  const close = promised <= nearlyThere * point.squares;
  const fall = point.squares - trial.squares;
  const gain = fall / promised;
  const better = close ? fall >= -nearlyThere * point.squares : gain > 1e-4;
  const stalled = close && length >= search.lastStep / 2;
  if (length <= 1e-14 * size || promised === 0 || stalled) search.state = "converged";
  if (better && !stalled) search.point = trial;
  if (better && close) search.lastStep = length;
  adapt(search, better, close ? 1 : gain);
  return better || search.state !== "searching";
};

/** Nielsen's (1999) rule: damping falls smoothly with the gain and rises ever faster on failure. */
const adapt = (search: Search, better: boolean, gain: number): void => {
  if (better) {
    search.damping *= Math.max(1 / 10, 1 - (2 * gain - 1) ** 3);
    search.growth = 2;
    return;
  }
  search.damping *= search.growth;
  search.growth *= 2;
  if (search.damping > 1e60) search.state = "stuck";
};

const iterate = (problem: CurveProblem, search: Search): void => {
  const line = linearise(problem, search.point);
  if (line === null) {
    search.state = "stuck";
    return;
  }
  search.scales = search.scales.map((scale, j) => Math.max(scale, line.norms[j]!) || 1);
  while (!tryStep(problem, search, line));
};

/**
 * Fits a curve with any parameters by weighted least squares: Levenberg-
 * Marquardt with the scaling of More (1978), each step solved by QR, so that
 * parameters of very different size do no harm.
 *
 * Standard uncertainties come from the residuals (n - p degrees of freedom)
 * and the slope of the curve at the solution; they take residuals as
 * independent. Some 15 to 30 iterations are usual, 1000 the most unless told.
 * `converged` false: the parameters are where the search ended,
 * not a solution. Smallest sample: p + 1 readings with weight. Null where
 * there are fewer, where the curve is not finite at the start, or where the
 * readings cannot tell the parameters apart.
 */
export const fitCurve = (problem: CurveProblem): CurveFit | null => {
  const count = weighted(problem);
  const point = pointAt(problem, problem.start);
  if (count <= problem.start.length || point.squares === Infinity) return null;
  const search: Search = {
    point,
    scales: problem.start.map(() => 0),
    damping: cautiousStart,
    growth: 2,
    lastStep: Infinity,
    state: "searching",
  };
  let iterations = 0;
  const most = problem.maxIterations ?? 1000;
  while (search.state === "searching" && iterations < most) {
    iterate(problem, search);
    iterations++;
  }
  return describe(problem, search, iterations, count - problem.start.length);
};

const weighted = ({ x, weights }: CurveProblem): number => {
  if (weights === undefined) return x.length;
  let count = 0;
  for (let i = 0; i < x.length; i++) if (weights[i]! > 0) count++;
  return count;
};

/** A column that the others explain to this share of its length is no column of its own. */
const leastIndependence = 1e-12;

const describe = (
  problem: CurveProblem,
  { point, state }: Search,
  iterations: number,
  degreesOfFreedom: number,
): CurveFit | null => {
  const line = linearise(problem, point);
  if (line === null) return null;
  const { triangle, norms } = line;
  const independent = triangle.every(
    (column, j) => Math.abs(column[j]!) > leastIndependence * norms[j]!,
  );
  if (!independent) return null;
  const variance = point.squares / degreesOfFreedom;
  const covariance = inverseOfNormal(triangle).map((row) => row.map((entry) => entry * variance));
  return {
    parameters: point.parameters,
    standardUncertainties: covariance.map((row, j) => Math.sqrt(row[j]!)),
    covariance,
    residualSumOfSquares: point.squares,
    residualStandardDeviation: Math.sqrt(variance),
    degreesOfFreedom,
    iterations,
    converged: state === "converged",
  };
};
