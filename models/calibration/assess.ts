/** How well rows settle parameters, at the point where they fit best. */
import { type Indistinct, inverseInformation } from '../../curves/inverse-information.ts';
import { type Result, success } from '../../curves/result.ts';
import { studentT95Both } from '../../curves/student-t.ts';
import { type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import type { Measured } from './measured-rows.ts';
import { ASSUMED_DEGREES, ASSUMED_VARIANCES, type Degrees, noiseOf, type Variances } from './noise.ts';

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
  /** Student's t of a two-sided interval of 95 %, of each parameter, and the greatest of those that flows rest on. */
  readonly quantiles: readonly number[];
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
  let free = ASSUMED_DEGREES;
  let found = covarianceOf(rows, names, variances);
  for (let round = 0; round < ROUNDS; round += 1) {
    if (!found.ok) return found;
    const { matrix } = found.value;
    const by = { names, matrix, variances };
    ({ variances, degrees: free } = noiseOf(rows.map((row) => ({ ...row, leverage: leverageOf(row, by) }))));
    found = covarianceOf(rows, names, variances);
  }
  if (!found.ok) return found;
  const { matrix, conditionNumber } = found.value;
  const by = { names, matrix, variances };
  const quantiles = degreesOf(rows, by, free).map((degrees) =>
    studentT95Both(Math.max(1, Math.min(DEGREES_MOST, Math.round(degrees)))),
  );
  const ofFlows = quantiles.filter((_, index) => names[index] !== 'power');
  return success({
    names,
    covariance: matrix,
    standardErrors: matrix.map((row, index) => Math.sqrt(row[index] ?? Number.NaN)),
    conditionNumber,
    ...{ variances, quantiles },
    t: Math.max(...(ofFlows.length === 0 ? quantiles : ofFlows)),
  });
}

interface Fitted {
  readonly names: readonly ParameterName[];
  readonly matrix: readonly (readonly number[])[];
  readonly variances: Variances;
}

/**
 * Degrees of freedom of each parameter, whose variance is a sum of shares c of the measures' own, each of n degrees:
 * (sum c)^2/sum(c^2/n).
 *
 * Source: Satterthwaite (1946), Biometrics Bulletin 2; Welch (1947).
 */
function degreesOf(
  rows: readonly LinearRow[],
  { names, matrix, variances }: Fitted,
  free: Degrees,
): readonly number[] {
  return matrix.map((weights) => {
    const shares = new Map<LinearRow['measure'], number>();
    for (const row of rows) {
      const slopes = slopesOf(row, names);
      const pull = weights.reduce((sum, weight, j) => sum + weight * (slopes[j] ?? 0), 0);
      const share = (pull ** 2 * row.count) / variances[row.measure];
      shares.set(row.measure, (shares.get(row.measure) ?? 0) + share);
    }
    const all = [...shares];
    const whole = all.reduce((sum, [, share]) => sum + share, 0);
    const parts = all.reduce((sum, [measure, share]) => sum + share ** 2 / free[measure], 0);
    return parts > 0 ? whole ** 2 / parts : 1;
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
