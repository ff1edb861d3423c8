/** Finds the covariance that the rows of a fit leave its parameters with. */
import { leastSquares } from './least-squares.ts';
import { failed, type Result, success } from './result.ts';

export interface InverseInformation {
  /**
   * (J'J)^-1 [product of the units of two parameters], one row a parameter: the covariance where every row has a
   * standard deviation of 1.
   */
  readonly matrix: readonly (readonly number[])[];
  /** Largest over smallest singular value of J with its columns brought to unit length [-]. */
  readonly conditionNumber: number;
}

/** The rows do not determine the parameters; conditionNumber [-] as of the inverse. */
export interface Indistinct {
  readonly code: 'singular';
  readonly conditionNumber: number;
}

/**
 * (J'J)^-1 of a Jacobian J, worked out on columns of unit length.
 *
 * @param jacobian one row a residual, one entry a parameter [unit of the residual/unit of the parameter].
 * Errors: `singular` where the columns are (nearly) dependent, no rows included.
 */
export function inverseInformation(
  jacobian: readonly (readonly number[])[],
): Result<InverseInformation, Indistinct> {
  const width = jacobian[0]?.length ?? 0;
  const lengths = Array.from({ length: width }, (_, column) =>
    Math.hypot(...jacobian.map((row) => row[column] ?? 0)),
  );
  if (width === 0 || lengths.includes(0)) return failed({ code: 'singular', conditionNumber: Infinity });
  const scaled = jacobian.map((row) => row.map((entry, column) => entry / (lengths[column] ?? 1)));
  const fit = leastSquares(
    scaled,
    scaled.map(() => 0),
  );
  if (!fit.ok) {
    const conditionNumber = fit.failure.code === 'singular' ? fit.failure.conditionNumber : Infinity;
    return failed({ code: 'singular', conditionNumber });
  }
  const inverse = inverted(
    lengths.map((_, i) => lengths.map((_, j) => sum(scaled.map((row) => (row[i] ?? 0) * (row[j] ?? 0))))),
  );
  return success({
    matrix: inverse.map((row, i) => row.map((entry, j) => entry / ((lengths[i] ?? 1) * (lengths[j] ?? 1)))),
    conditionNumber: fit.value.conditionNumber,
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Of a symmetric positive definite matrix, by elimination, whose pivots stay positive. */
function inverted(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const size = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))]);
  for (const [column, pivotRow] of rows.entries()) {
    const pivot = pivotRow[column] ?? Number.NaN;
    for (const [index, entry] of pivotRow.entries()) pivotRow[index] = entry / pivot;
    for (const [i, row] of rows.entries()) {
      const factor = row[column] ?? 0;
      if (i === column || factor === 0) continue;
      for (const [j, entry] of pivotRow.entries()) row[j] = (row[j] ?? 0) - factor * entry;
    }
  }
  return rows.map((row) => row.slice(size));
}
