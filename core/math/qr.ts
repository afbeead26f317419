/** Columns of a matrix, each as long as the others. */
export type Columns = Float64Array[];

/** A column that keeps less than this share of its length beside those before it adds nothing that can be told from rounding. */
const DEPENDENT = 1e-10;

/**
 * Turns the columns, in place, into the upper triangle R of their QR decomposition by Householder reflections (Golub and Van Loan,
 * Matrix Computations, algorithm 5.2.1, from memory), and `target` into Qᵀ·target. Columns that depend on those before them are
 * passed over: they have no row of their own.
 *
 * @returns the indexes of the independent columns: R[i][j] is columns[kept[j]][i] for i ≤ j
 */
export function triangularise(columns: Columns, target: Float64Array): number[] {
  const rows = target.length;
  const kept: number[] = [];
  for (const [index, column] of columns.entries()) {
    const top = kept.length;
    if (top === rows) break;
    let below = 0;
    let whole = 0;
    for (let i = 0; i < rows; i++) {
      const square = column[i]! * column[i]!;
      whole += square;
      if (i >= top) below += square;
    }
    if (!(below > whole * DEPENDENT * DEPENDENT)) continue;
    const length = Math.sqrt(below);
    const diagonal = column[top]! > 0 ? -length : length;
    const first = column[top]! - diagonal;
    const scale = -1 / (diagonal * first);
    const reflect = (other: Float64Array) => {
      let dot = first * other[top]!;
      for (let i = top + 1; i < rows; i++) dot += column[i]! * other[i]!;
      dot *= scale;
      other[top]! -= dot * first;
      for (let i = top + 1; i < rows; i++) other[i]! -= dot * column[i]!;
    };
    for (let j = index + 1; j < columns.length; j++) reflect(columns[j]!);
    reflect(target);
    column[top] = diagonal;
    kept.push(index);
  }
  return kept;
}

/** x with R·x = b, R the upper triangle in `columns` (an entry R[i][j] is columns[j][i]), of the size of `columns`. */
export function solveUpper(columns: Columns, b: ArrayLike<number>): Float64Array {
  const n = columns.length;
  const x = Float64Array.from({ length: n }, (_, i) => b[i]!);
  for (let j = n - 1; j >= 0; j--) {
    x[j]! /= columns[j]![j]!;
    for (let i = 0; i < j; i++) x[i]! -= columns[j]![i]! * x[j]!;
  }
  return x;
}

/** x with Rᵀ·x = b. */
export function solveLower(columns: Columns, b: ArrayLike<number>): Float64Array {
  const n = columns.length;
  const x = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    let sum = b[j]!;
    for (let i = 0; i < j; i++) sum -= columns[j]![i]! * x[i]!;
    x[j] = sum / columns[j]![j]!;
  }
  return x;
}
