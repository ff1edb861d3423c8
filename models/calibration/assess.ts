/** How well rows settle parameters, at the point where they fit best. */
import { type Indistinct, inverseInformation } from '../../curves/inverse-information.ts';
import { type Result, success } from '../../curves/result.ts';
import { studentT95Both } from '../../curves/student-t.ts';
import { type Factors, factorOf, type ParameterName } from './factors.ts';
import type { Measured } from './measured.ts';
import { ASSUMED_READINGS, ASSUMED_VARIANCES, noiseOf, type Variances } from './noise.ts';

/** A row with ln(mean/predicted) and d ln(predicted)/d factor. */
export interface LinearRow extends Pick<Measured, 'measure' | 'count' | 'spread'> {
  readonly residual: number;
  readonly slopes: Factors;
}

export interface Assessment {
  readonly names: readonly ParameterName[];
  /** Of the parameters, in the order of their names. */
  readonly covariance: readonly (readonly number[])[];
  readonly standardErrors: readonly number[];
  /** Of the rows over their noise, columns of unit length. */
  readonly conditionNumber: number;
  readonly variances: Variances;
  /** Student's t of a two-sided interval of 95 %. */
  readonly t: number;
}

/** From here on the quantile no longer moves. */
const DEGREES_MOST = 5_000;
/** Noise and fit follow from each other: two rounds settle them to under 1 %. */
const ROUNDS = 3;

/** Error: `singular` where the rows do not settle the parameters at all. */
export function assess(
  rows: readonly LinearRow[],
  names: readonly ParameterName[],
): Result<Assessment, Indistinct> {
  let variances = ASSUMED_VARIANCES;
  let freeOfMisfit: number | null = null;
  let found = covarianceOf(rows, names, variances);
  for (let round = 0; round < ROUNDS; round += 1) {
    if (!found.ok) return found;
    const { matrix } = found.value;
    const by = { names, matrix, variances };
    ({ variances, freeOfMisfit } = noiseOf(rows.map((row) => ({ ...row, leverage: leverageOf(row, by) }))));
    found = covarianceOf(rows, names, variances);
  }
  if (!found.ok) return found;
  const { matrix, conditionNumber } = found.value;
  const readings = rows.reduce((sum, { count }) => sum + count, 0);
  const degrees = freeOfMisfit ?? Math.max(0, readings - names.length) + ASSUMED_READINGS;
  return success({
    names,
    covariance: matrix,
    standardErrors: matrix.map((row, index) => Math.sqrt(row[index] ?? Number.NaN)),
    conditionNumber,
    variances,
    t: studentT95Both(Math.min(DEGREES_MOST, degrees)),
  });
}

/** How far the head of a pump may be from that as entered where no reading tells it: a tenth, by wear and by its points. */
const HEAD_AS_ENTERED = 0.1;

/**
 * The covariance of friction and head, and power where it was fitted, where their ratio alone is told: with the head taken
 * as entered within a tenth. Null where they are told apart already.
 */
export function covarianceBehindRatio(
  rows: readonly LinearRow[],
  { names, variances }: Assessment,
): Pick<Assessment, 'names' | 'covariance'> | null {
  if (!names.includes('frictionOverHead')) return null;
  const behind: readonly ParameterName[] = names.includes('power')
    ? ['friction', 'head', 'power']
    : ['friction', 'head'];
  const asEntered = behind.map((name) => (name === 'head' ? 1 / HEAD_AS_ENTERED : 0));
  const found = inverseInformation([...weightedRows(rows, behind, variances), asEntered]);
  return found.ok ? { names: behind, covariance: found.value.matrix } : null;
}

const slopesOf = ({ slopes }: LinearRow, names: readonly ParameterName[]): readonly number[] =>
  names.map((name) => slopes[factorOf(name)]);

const covarianceOf = (rows: readonly LinearRow[], names: readonly ParameterName[], variances: Variances) =>
  inverseInformation(weightedRows(rows, names, variances));

const weightedRows = (
  rows: readonly LinearRow[],
  names: readonly ParameterName[],
  variances: Variances,
): readonly (readonly number[])[] =>
  rows.map((row) => {
    const weight = Math.sqrt(row.count / variances[row.measure]);
    return slopesOf(row, names).map((slope) => weight * slope);
  });

function leverageOf(
  row: LinearRow,
  {
    names,
    matrix,
    variances,
  }: {
    readonly names: readonly ParameterName[];
    readonly matrix: readonly (readonly number[])[];
    readonly variances: Variances;
  },
): number {
  return (row.count / variances[row.measure]) * quadraticForm(matrix, slopesOf(row, names));
}

/** g' M g: the variance of what has the gradient g, with M the covariance. */
export function quadraticForm(matrix: readonly (readonly number[])[], gradient: readonly number[]): number {
  return gradient.reduce(
    (sum, left, i) =>
      sum + left * gradient.reduce((inner, right, j) => inner + (matrix[i]?.[j] ?? 0) * right, 0),
    0,
  );
}
