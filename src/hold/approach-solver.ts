import { cholesky, solveLower } from "../stats/cholesky.ts";
import { medianAbsoluteDeviation, scaledMad } from "../stats/median.ts";

/** Minutes from the start of the fit and degC there, with what an independent residual weighs. */
export interface ApproachData {
  readonly times: Float64Array;
  readonly values: Float64Array;
  /** Residual variance times readings per independent stretch, degC^2: the scale on which priors count. */
  readonly scale: number;
}

/** How a level may move: standard deviations of slope (degC per hour) and bend (degC per hour squared). */
export interface LevelPrior {
  readonly slope: number;
  readonly bend: number;
}

export interface ApproachSolution {
  /** degC at the start of the fit, degC per hour, degC per hour squared. */
  readonly level: number;
  readonly slope: number;
  readonly bend: number;
  /** degC missing at the start. */
  readonly amplitude: number;
  /** Root mean square residual over the first three time constants, degC. */
  readonly earlyResidual: number;
  /** Robust standard deviation of the residuals afterwards, degC; NaN where there is no afterwards. */
  readonly lateResidual: number;
  /** Residual sum of squares with what the priors add, degC^2. */
  readonly cost: number;
}

const size = 4;

/**
 * Level, slope, bend and amplitude of y = level(t) - amplitude e^(-t/constant)
 * for one time constant: linear least squares with normal priors on slope and
 * bend (ridge regression, Hoerl & Kennard 1970). Null where the columns cannot
 * be told apart.
 */
export const solveApproach = (
  data: ApproachData,
  constant: number,
  prior: LevelPrior,
): ApproachSolution | null => {
  const { times, scale } = data;
  const middle = times[times.length - 1]! / 120;
  const hours = times.map((time) => time / 60 - middle);
  const decay = times.map((time) => -Math.exp(-time / constant));
  const ridge = [0, scale / prior.slope ** 2, scale / prior.bend ** 2, 0];
  const solution = leastSquares(data.values, hours, decay, ridge);
  if (solution === null) return null;
  const [level, slope, bend, amplitude] = solution;
  const residuals = data.values.map(
    (value, index) =>
      value - level - hours[index]! * (slope + bend * hours[index]!) - amplitude * decay[index]!,
  );
  let cost = slope * slope * ridge[1]! + bend * bend * ridge[2]!;
  for (const residual of residuals) cost += residual * residual;
  return {
    level: level - slope * middle + bend * middle * middle,
    slope: slope - 2 * bend * middle,
    bend,
    amplitude,
    cost,
    ...residualSizes(times, residuals, 3 * constant),
  };
};

type Four = readonly [number, number, number, number];

/** Columns 1, hours, hours squared and decay. */
const leastSquares = (
  values: Float64Array,
  hours: Float64Array,
  decay: Float64Array,
  ridge: readonly number[],
): Four | null => {
  const normal = new Float64Array(size * size);
  const right = new Float64Array(size);
  const row = new Float64Array(size).fill(1, 0, 1);
  for (let index = 0; index < values.length; index += 1) {
    row[1] = hours[index]!;
    row[2] = hours[index]! * hours[index]!;
    row[3] = decay[index]!;
    for (let j = 0; j < size; j += 1) {
      right[j]! += row[j]! * values[index]!;
      for (let k = 0; k <= j; k += 1) normal[j * size + k]! += row[j]! * row[k]!;
    }
  }
  for (let j = 0; j < size; j += 1) normal[j * (size + 1)]! += ridge[j]!;
  const lower = cholesky(normal, size);
  return lower === null ? null : solveUpper(lower, solveLower(lower, size, right));
};

/** Solves L' x = z. */
const solveUpper = (lower: Float64Array, z: Float64Array): Four => {
  const x: [number, number, number, number] = [0, 0, 0, 0];
  for (let j = size - 1; j >= 0; j -= 1) {
    let sum = z[j]!;
    for (let k = j + 1; k < size; k += 1) sum -= lower[k * size + j]! * x[k]!;
    x[j] = sum / lower[j * (size + 1)]!;
  }
  return x;
};

const residualSizes = (
  times: Float64Array,
  residuals: Float64Array,
  until: number,
): { readonly earlyResidual: number; readonly lateResidual: number } => {
  let early = 0;
  while (early < times.length && times[early]! <= until) early += 1;
  let squares = 0;
  for (let index = 0; index < early; index += 1) squares += residuals[index]! ** 2;
  return {
    earlyResidual: Math.sqrt(squares / early),
    lateResidual: scaledMad * medianAbsoluteDeviation(residuals.subarray(early)),
  };
};
