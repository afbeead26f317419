/**
 * Householder's QR decomposition (Golub and Van Loan, Matrix Computations, 5.2.1), in place. Afterwards column j holds column j of R
 * down to its diagonal and zeros below; columns after the first `count` hold Qᵀ times what they held, so a right-hand side goes last.
 * R's leading block is that of the leading columns alone: nested models need one decomposition.
 *
 * @param columns all of one length, no shorter than `count`
 */
export function triangularise(columns: readonly Float64Array[], count: number): void {
  for (let j = 0; j < count; j++) {
    const v = columns[j]!;
    let squares = 0;
    for (let i = j; i < v.length; i++) squares += v[i]! * v[i]!;
    if (squares === 0) continue;
    const first = v[j]!;
    const norm = first > 0 ? -Math.sqrt(squares) : Math.sqrt(squares);
    v[j] = first - norm;
    const half = squares - first * norm;
    for (let k = j + 1; k < columns.length; k++) {
      const column = columns[k]!;
      let dot = 0;
      for (let i = j; i < v.length; i++) dot += v[i]! * column[i]!;
      dot /= half;
      for (let i = j; i < v.length; i++) column[i]! -= dot * v[i]!;
    }
    v.fill(0, j + 1);
    v[j] = norm;
  }
}

/** The columns of R⁻¹, each of length n; R is the leading n × n block of triangularised columns, none of its diagonal zero. */
export function upperInverse(columns: readonly Float64Array[], n: number): Float64Array[] {
  return Array.from({ length: n }, (_, j) => {
    const x = new Float64Array(n);
    x[j] = 1;
    for (let i = j; i >= 0; i--) {
      let sum = x[i]!;
      for (let k = i + 1; k <= j; k++) sum -= columns[k]![i]! * x[k]!;
      x[i] = sum / columns[i]![i]!;
    }
    return x;
  });
}

/**
 * Lower triangular L, row by row, n × n, with L·Lᵀ = Σ columnᵢ·columnᵢᵀ and no negative diagonal: the Cholesky factor of a covariance
 * that is given by its independent parts. Never forms the covariance, so no digits are lost in squares and a singular one does not fail.
 *
 * @param parts vectors of length n
 */
export function choleskyOfSum(parts: readonly ArrayLike<number>[], n: number): Float64Array {
  const rows = Math.max(n, parts.length);
  const columns = Array.from({ length: n }, (_, k) =>
    Float64Array.from({ length: rows }, (_, i) => parts[i]?.[k] ?? 0),
  );
  triangularise(columns, n);
  const factor = new Float64Array(n * n);
  for (let k = 0; k < n; k++) {
    // Row i of R is a column of L, of either sign.
    for (let i = 0; i <= k; i++) factor[k * n + i] = columns[i]![i]! < 0 ? -columns[k]![i]! : columns[k]![i]!;
  }
  return factor;
}

/** Lower triangular L, row by row, with L·Lᵀ a symmetric matrix without negative eigenvalues; a direction without variance gets zeros. */
export function cholesky(matrix: readonly ArrayLike<number>[]): number[][] {
  const rows = matrix.map(() => new Array<number>(matrix.length).fill(0));
  for (let i = 0; i < matrix.length; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= rows[i]![k]! * rows[j]![k]!;
      if (i === j) rows[i]![i] = sum > 0 ? Math.sqrt(sum) : 0;
      else rows[i]![j] = rows[j]![j]! > 0 ? sum / rows[j]![j]! : 0;
    }
  }
  return rows;
}
