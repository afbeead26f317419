/**
 * Solves A x = b for a small dense system, by Gaussian elimination with partial pivoting. Destroys both.
 *
 * @param a row by row, n × n
 * @param b n × columns, row by row; holds the solutions afterwards
 * @returns false when A is singular to working precision
 */
export function solveInPlace(a: Float64Array, b: Float64Array, n: number): boolean {
  const columns = b.length / n;
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot;
    for (let row = pivot + 1; row < n; row++) {
      if (Math.abs(a[row * n + pivot]!) > Math.abs(a[best * n + pivot]!)) best = row;
    }
    const size = a[best * n + pivot]!;
    if (!(Math.abs(size) > 0)) return false;
    if (best !== pivot) {
      swapRows(a, n, pivot, best);
      swapRows(b, columns, pivot, best);
    }
    for (let row = pivot + 1; row < n; row++) {
      const factor = a[row * n + pivot]! / size;
      if (factor === 0) continue;
      for (let column = pivot; column < n; column++) a[row * n + column]! -= factor * a[pivot * n + column]!;
      for (let column = 0; column < columns; column++)
        b[row * columns + column]! -= factor * b[pivot * columns + column]!;
    }
  }
  for (let row = n - 1; row >= 0; row--) {
    for (let column = 0; column < columns; column++) {
      let sum = b[row * columns + column]!;
      for (let k = row + 1; k < n; k++) sum -= a[row * n + k]! * b[k * columns + column]!;
      b[row * columns + column] = sum / a[row * n + row]!;
    }
  }
  return true;
}

function swapRows(matrix: Float64Array, width: number, one: number, other: number): void {
  for (let column = 0; column < width; column++) {
    const kept = matrix[one * width + column]!;
    matrix[one * width + column] = matrix[other * width + column]!;
    matrix[other * width + column] = kept;
  }
}
