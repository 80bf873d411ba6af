const smallestPivot = 1e-14;

/**
 * Inverse of a small symmetric matrix with a positive diagonal, by Gauss-Jordan elimination on the matrix scaled to ones on
 * its diagonal. `null` when it has no inverse to working precision.
 */
export function inverseOfSymmetric(matrix: readonly (readonly number[])[]): number[][] | null {
  const size = matrix.length;
  const scale = matrix.map((row, index) => Math.sqrt(row[index]!));
  const rows = matrix.map((row, i) => [
    ...row.map((value, j) => value / (scale[i]! * scale[j]!)),
    ...row.map((_, j) => (i === j ? 1 : 0)),
  ]);
  for (let column = 0; column < size; column++) {
    // The scaled matrix is positive definite, so the diagonal is a safe pivot; NaN where it was not positive.
    const pivotRow = rows[column]!;
    const pivot = pivotRow[column]!;
    if (!(pivot > smallestPivot)) return null;
    for (let k = 0; k < 2 * size; k++) pivotRow[k]! /= pivot;
    for (const row of rows) {
      if (row === pivotRow) continue;
      const factor = row[column]!;
      for (let k = 0; k < 2 * size; k++) row[k]! -= factor * pivotRow[k]!;
    }
  }
  return rows.map((row, i) => row.slice(size).map((value, j) => value / (scale[i]! * scale[j]!)));
}
