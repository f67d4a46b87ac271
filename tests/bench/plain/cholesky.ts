/**
 * Lower Cholesky factor of a symmetric positive definite matrix, row by row (Golub and Van Loan, Matrix
 * Computations, algorithm 4.2.2).
 *
 * @param matrix n × n, row-major; not changed
 * @throws RangeError when the matrix is not positive definite
 */
export function cholesky(matrix: Float64Array, n: number): Float64Array {
  const factor = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j];
      for (let k = 0; k < j; k++) sum -= factor[i * n + k] * factor[j * n + k];
      if (i === j) {
        if (sum <= 0) throw new RangeError("The matrix is not positive definite.");
        factor[i * n + i] = Math.sqrt(sum);
      } else {
        factor[i * n + j] = sum / factor[j * n + j];
      }
    }
  }
  return factor;
}

/** Solves L x = b for a lower factor L; returns x. */
export function solveLower(factor: Float64Array, n: number, b: ArrayLike<number>): Float64Array {
  const x = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = b[i];
    for (let k = 0; k < i; k++) sum -= factor[i * n + k] * x[k];
    x[i] = sum / factor[i * n + i];
  }
  return x;
}

/** log of the determinant of L Lᵀ. */
export function logDeterminant(factor: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += Math.log(factor[i * n + i]);
  return 2 * sum;
}
