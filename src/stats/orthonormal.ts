/** Columns that the ones before explain to this share of their length are no columns of their own. */
const leastIndependence = 1e-7;

/**
 * Orthonormal columns that span the same space, by modified Gram-Schmidt run
 * twice (Bjorck 1996, Numerical Methods for Least Squares Problems, 2.4: twice
 * is enough); columns that depend on those before are left out.
 */
export const orthonormal = (columns: readonly Float64Array[]): readonly Float64Array[] => {
  const basis: Float64Array[] = [];
  for (const column of columns) {
    const length = lengthOf(column);
    const rest = orthogonalPart(orthogonalPart(column, basis), basis);
    const left = lengthOf(rest);
    if (left > leastIndependence * length) basis.push(rest.map((value) => value / left));
  }
  return basis;
};

/** What is left of `values` after its parts along the orthonormal columns: a least-squares fit's residuals. */
export const orthogonalPart = (
  values: Float64Array,
  basis: readonly Float64Array[],
): Float64Array => {
  const rest = values.slice();
  for (const unit of basis) {
    let along = 0;
    for (let i = 0; i < rest.length; i++) along += unit[i]! * rest[i]!;
    for (let i = 0; i < rest.length; i++) rest[i]! -= along * unit[i]!;
  }
  return rest;
};

const lengthOf = (values: Float64Array): number => {
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += values[i]! * values[i]!;
  return Math.sqrt(squares);
};
