/**
 * Lower triangle L of a symmetric positive definite matrix, A = L L'.
 *
 * @param matrix row-major n x n; only the lower triangle is read
 * @param size n
 * @returns row-major L (upper triangle zero), or null when the matrix is not
 *   positive definite to working precision
 *
 * Method: Cholesky-Banachiewicz (Golub & Van Loan, Matrix Computations, 4.2).
 */
export const cholesky = (matrix: Float64Array, size: number): Float64Array | null => {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = matrix[row * size + column]!;
      for (let k = 0; k < column; k += 1) {
        sum -= lower[row * size + k]! * lower[column * size + k]!;
      }
      if (row === column) {
        if (!(sum > 0)) return null;
        lower[row * size + row] = Math.sqrt(sum);
      } else {
        lower[row * size + column] = sum / lower[column * size + column]!;
      }
    }
  }
  return lower;
};

/** Solves L z = b for z, L lower triangular as `cholesky` returns it. */
export const solveLower = (
  lower: Float64Array,
  size: number,
  b: ArrayLike<number>,
): Float64Array => {
  const z = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    let sum = b[row]!;
    for (let k = 0; k < row; k += 1) sum -= lower[row * size + k]! * z[k]!;
    z[row] = sum / lower[row * size + row]!;
  }
  return z;
};

/** L z, the draw with covariance L L' made from independent standard normals z. */
export const multiplyLower = (
  lower: Float64Array,
  size: number,
  z: ArrayLike<number>,
): Float64Array => {
  const product = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    let sum = 0;
    for (let k = 0; k <= row; k += 1) sum += lower[row * size + k]! * z[k]!;
    product[row] = sum;
  }
  return product;
};
