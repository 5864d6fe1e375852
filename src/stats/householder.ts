/** A matrix as its columns, each of the same length. */
export type Columns = readonly Float64Array[];

/** Reflects `target` so that the part of `mirror` from `from` on falls on one axis. */
const reflect = (mirror: Float64Array, from: number, half: number, target: Float64Array): void => {
  let product = 0;
  for (let i = from; i < target.length; i++) product += mirror[i]! * target[i]!;
  const scale = product / half;
  for (let i = from; i < target.length; i++) target[i]! -= scale * mirror[i]!;
};

/**
 * QR decomposition by Householder reflections (Golub & Van Loan), in place:
 * afterwards `columns[j][i]`, i <= j, is R, and `right` is Q' right. Entries
 * below the diagonal are zero. Rows at least as many as columns.
 */
export const triangularise = (columns: Columns, right: Float64Array): void => {
  for (let k = 0; k < columns.length; k++) {
    const mirror = columns[k]!.slice();
    let squares = 0;
    for (let i = k; i < mirror.length; i++) squares += mirror[i]! * mirror[i]!;
    if (squares === 0) continue;
    const diagonal = mirror[k]! > 0 ? -Math.sqrt(squares) : Math.sqrt(squares);
    const half = squares - diagonal * mirror[k]!;
    mirror[k]! -= diagonal;
    for (let j = k + 1; j < columns.length; j++) reflect(mirror, k, half, columns[j]!);
    reflect(mirror, k, half, right);
    columns[k]!.fill(0, k);
    columns[k]![k] = diagonal;
  }
};

/** Solves R s = right for an upper triangular R held as columns. */
export const solveUpper = (columns: Columns, right: Float64Array): Float64Array => {
  const solution = right.slice(0, columns.length);
  for (let k = columns.length - 1; k >= 0; k--) {
    solution[k]! /= columns[k]![k]!;
    for (let i = 0; i < k; i++) solution[i]! -= columns[k]![i]! * solution[k]!;
  }
  return solution;
};

/** Inverse of R'R as rows, R upper triangular: the unscaled covariance of a least-squares fit. */
export const inverseOfNormal = (columns: Columns): number[][] => {
  const size = columns.length;
  const inverse = columns.map((_, k) => {
    const unit = new Float64Array(size);
    unit[k] = 1;
    return solveUpper(columns, unit);
  });
  const entry = (i: number, j: number): number =>
    inverse.reduce((sum, column) => sum + column[i]! * column[j]!, 0);
  return columns.map((_, i) => columns.map((__, j) => entry(i, j)));
};
