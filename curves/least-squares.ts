/** Solves ordinary linear least squares on columns that the caller chooses. */
import { Matrix, QrDecomposition, SingularValueDecomposition } from 'ml-matrix';
import { MultivariateLinearRegression } from 'ml-regression';
import { failed, type Result, success } from './result.ts';

/** The coefficients of a linear fit, with what shows its quality. */
export interface LeastSquaresFit {
  /** One a column, in the columns' order [unit of the values/unit of the column]. */
  readonly coefficients: readonly number[];
  /** Value less fitted value, one a row, in the rows' order [unit of the values]. */
  readonly residuals: readonly number[];
  /** Diagonal of the hat matrix [-], 0..1, one a row. */
  readonly leverages: readonly number[];
  /** Largest over smallest singular value of the columns as given [-]. */
  readonly conditionNumber: number;
}

/** Why nothing was fitted; conditionNumber [-] as of a fit, infinite with fewer rows than columns. */
export type LeastSquaresFailure =
  | { readonly code: 'not-finite' }
  | { readonly code: 'singular'; readonly conditionNumber: number };

/** Normal equations square the condition number: past this one, nothing is left of sixteen digits to refine. */
const CONDITION_LIMIT = 1e7;
const REFINEMENT_LIMIT = 8;
const REFINED = 1e-15;

/**
 * The coefficients b that minimise |y - X b|^2 (ordinary least squares), with residuals, leverages and the 2-norm
 * condition number of X.
 *
 * The solver works on normal equations, so columns go in at unit length and the residuals are fitted again until the
 * correction is below 1e-15 of the coefficients. Leverages come from the QR factors of X.
 * @param rows of X, each entry in the unit of its column [any]; at least as many rows as columns.
 * @param values y [any], one a row.
 * Accuracy: ten digits of every certified coefficient of NIST Norris, Pontius and Longley
 *   (test/curves/least-squares.test.ts).
 * Errors: `not-finite` where an input is not a finite number; `singular` where the columns are (nearly) dependent,
 *   fewer rows than columns included.
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  values: readonly number[],
): Result<LeastSquaresFit, LeastSquaresFailure> {
  if (!values.every(Number.isFinite) || !rows.every((row) => row.every(Number.isFinite))) {
    return failed({ code: 'not-finite' });
  }
  const width = rows[0]?.length ?? 0;
  if (width === 0 || rows.length < width) return failed({ code: 'singular', conditionNumber: Infinity });

  const lengths = Array.from({ length: width }, (_, column) =>
    Math.sqrt(sum(rows.map((row) => (row[column] ?? 0) ** 2))),
  );
  const scaled = rows.map((row) => row.map((entry, column) => entry / (lengths[column] ?? 1)));
  const qr = new QrDecomposition(new Matrix(rows.map((row) => [...row])));
  const conditionNumber = conditionOf(qr.upperTriangularMatrix);
  const scaledCondition = lengths.includes(0)
    ? Infinity
    : conditionOf(new QrDecomposition(new Matrix(scaled)).upperTriangularMatrix);
  if (scaledCondition > CONDITION_LIMIT) return failed({ code: 'singular', conditionNumber });

  const weights = refinedWeights(scaled, values);
  return success({
    coefficients: weights.map((weight, column) => weight / (lengths[column] ?? 1)),
    residuals: residualsOf(scaled, values, weights),
    leverages: qr.orthogonalMatrix.to2DArray().map((row) => sum(row.map((entry) => entry ** 2))),
    conditionNumber,
  });
}

/** The triangular QR factor has the singular values of the whole, at the cost of a few columns squared. */
function conditionOf(triangular: Matrix): number {
  const { condition } = new SingularValueDecomposition(triangular);
  return Number.isNaN(condition) ? Infinity : condition;
}

function refinedWeights(rows: readonly (readonly number[])[], values: readonly number[]): readonly number[] {
  let weights = normalEquationWeights(rows, values);
  for (let pass = 0; pass < REFINEMENT_LIMIT; pass += 1) {
    const correction = normalEquationWeights(rows, residualsOf(rows, values, weights));
    weights = weights.map((weight, column) => weight + (correction[column] ?? 0));
    if (largest(correction) <= REFINED * largest(weights)) break;
  }
  return weights;
}

function normalEquationWeights(
  rows: readonly (readonly number[])[],
  values: readonly number[],
): readonly number[] {
  const model = new MultivariateLinearRegression(
    rows.map((row) => [...row]),
    values.map((value) => [value]),
    { intercept: false, statistics: false },
  );
  return model.weights.flat();
}

function residualsOf(
  rows: readonly (readonly number[])[],
  values: readonly number[],
  weights: readonly number[],
): readonly number[] {
  return rows.map(
    (row, index) => (values[index] ?? 0) - sum(row.map((entry, column) => entry * (weights[column] ?? 0))),
  );
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const largest = (values: readonly number[]): number => Math.max(...values.map(Math.abs));
