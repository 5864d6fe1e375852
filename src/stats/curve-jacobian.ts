/** Value of a curve at x, and its derivatives with respect to each parameter. */
export type CurveModel = (parameters: readonly number[], x: number) => number;
export type CurveJacobian = (parameters: readonly number[], x: number) => readonly number[];

const relativeStep = Math.cbrt(Number.EPSILON);

const moved = (parameters: readonly number[], j: number, by: number): number[] =>
  parameters.map((value, k) => (k === j ? value + by : value));

const centralColumn = (
  model: CurveModel,
  parameters: readonly number[],
  x: ArrayLike<number>,
  j: number,
): Float64Array => {
  const step = relativeStep * (Math.abs(parameters[j]!) || 1);
  const up = moved(parameters, j, step);
  const down = moved(parameters, j, -step);
  // The step as the machine holds it, not as it was asked for.
  const width = up[j]! - down[j]!;
  const column = new Float64Array(x.length);
  for (let i = 0; i < column.length; i++)
    column[i] = (model(up, x[i]!) - model(down, x[i]!)) / width;
  return column;
};

/**
 * Derivatives of the curve at every x, one column per parameter: by `jacobian`
 * where given, else by central differences (about 1e-10 relative).
 */
export const jacobianColumns = (
  model: CurveModel,
  jacobian: CurveJacobian | undefined,
  parameters: readonly number[],
  x: ArrayLike<number>,
): Float64Array[] => {
  if (jacobian === undefined) {
    return parameters.map((_, j) => centralColumn(model, parameters, x, j));
  }
  const columns = parameters.map(() => new Float64Array(x.length));
  for (let i = 0; i < x.length; i++) {
    const row = jacobian(parameters, x[i]!);
    for (let j = 0; j < columns.length; j++) columns[j]![i] = row[j]!;
  }
  return columns;
};
