/** Inverts symmetric positive definite matrices. */

/** Of a matrix of entries [any]: its inverse [1/any], and the natural logarithm of its determinant [-]. */
export interface PositiveInverse {
  readonly inverse: readonly (readonly number[])[];
  readonly logDeterminant: number;
}

/** A pivot under this share of its diagonal entry is rounding: its column is a sum of the others. */
const LEAST_PIVOT = 1e-12;

/**
 * By elimination, whose pivots stay positive: the determinant is their product. For the few parameters of a fit; bring columns
 * of unlike sizes to one length first. Null where the matrix is singular, or nearly.
 *
 * @param matrix symmetric, its entries [any].
 */
export function positiveInverse(matrix: readonly (readonly number[])[]): PositiveInverse | null {
  const size = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))]);
  let logDeterminant = 0;
  for (const [column, pivotRow] of rows.entries()) {
    const pivot = pivotRow[column] ?? Number.NaN;
    if (!(pivot > LEAST_PIVOT * (matrix[column]?.[column] ?? 0))) return null;
    logDeterminant += Math.log(pivot);
    for (const [index, entry] of pivotRow.entries()) pivotRow[index] = entry / pivot;
    for (const [i, row] of rows.entries()) {
      const factor = row[column] ?? 0;
      if (i === column || factor === 0) continue;
      for (const [j, entry] of pivotRow.entries()) row[j] = (row[j] ?? 0) - factor * entry;
    }
  }
  return { inverse: rows.map((row) => row.slice(size)), logDeterminant };
}
