/** States how surely rows determine factors: by the scatter of readings, and by the errors that a meter's readings share. */
import { type Indistinct, inverseInformation } from '../../curves/inverse-information.ts';
import { type Result, success } from '../../curves/result.ts';
import { studentT95Both } from '../../curves/student-t.ts';
import { DEVIATE_95 } from '../../curves/theil-sen.ts';
import { type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import { SCATTER_ASSUMED } from '../readings/measure.ts';
import { type RobustFit, scaleOf } from './robust-fit.ts';
import type { Gauge, Row } from './row-collector.ts';

/** A row as far as errors go: the sums of its weights and of their squares. */
export interface WeighedRow extends Gauge, Pick<Row, 'meter'> {
  readonly weight: number;
  readonly squares: number;
  readonly scale: number;
  /** d ln predicted/d ln factor. */
  readonly slopes: Factors;
}

/** One standard deviation of the gain of each meter; of pressures: of the head that both give. */
export type Accuracies = Readonly<Record<Row['meter'], number>>;

export interface Covariance {
  readonly names: readonly ParameterName[];
  /** Of the factors, in the order of their names. */
  readonly matrix: readonly (readonly number[])[];
  /** Of the rows over their noise, columns of unit length. */
  readonly conditionNumber: number;
}

export const weighedRows = ({ rows, scales }: RobustFit): readonly WeighedRow[] =>
  rows.map(({ row: { values: _, times: __, ...row }, weights, slopes }) => ({
    ...{ ...row, slopes, scale: scaleOf(scales, row) },
    weight: weights.reduce((sum, one) => sum + one, 0),
    squares: weights.reduce((sum, one) => sum + one ** 2, 0),
  }));

/**
 * C = A diag(s2) A' (widened by Student's t) + sum over meters of accuracy^2 g g', A what each reading moves the factors by, g = A 1 over
 * the readings of a meter: an error of its gain is one error, and more readings do not make it smaller.
 *
 * Source: JCGM 100 (GUM), 5.2, correlated input quantities. Error: `singular` where the rows do not determine the factors.
 */
export function covarianceOf(
  rows: readonly WeighedRow[],
  { names, factors, accuracies }: Pick<RobustFit, 'names' | 'factors'> & { readonly accuracies: Accuracies },
): Result<Covariance, Indistinct> {
  const columns = ({ slopes }: WeighedRow) => names.map((name) => slopes[factorOf(name)]);
  const found = inverseInformation(
    rows.map((row) => columns(row).map((slope) => (Math.sqrt(row.weight) / row.scale) * slope)),
  );
  if (!found.ok) return found;
  const { matrix: inverse, conditionNumber } = found.value;
  const readings = rows.reduce((sum, { weight }) => sum + weight, 0);
  const degrees = SCATTER_ASSUMED.readings + Math.max(0, Math.floor(readings) - names.length);
  const widened = (studentT95Both(Math.min(DEGREES_MOST, degrees)) / DEVIATE_95) ** 2;
  const gains = new Map<WeighedRow['meter'], readonly number[]>();
  const matrix = names.map(() => names.map(() => 0));
  for (const row of rows) {
    // What a unit of each reading of the row moves the logarithms of the factors by.
    const moved = inverse.map((line) => dot(line, columns(row)) / row.scale ** 2);
    addProduct(matrix, moved, widened * row.squares * row.scale ** 2);
    const gain = gains.get(row.meter) ?? names.map(() => 0);
    gains.set(
      row.meter,
      gain.map((one, i) => one + row.weight * (moved[i] ?? 0)),
    );
  }
  for (const [meter, gain] of gains) addProduct(matrix, gain, accuracies[meter] ** 2);
  const values = names.map((name) => factors[factorOf(name)]);
  return success({
    ...{ names, conditionNumber },
    matrix: matrix.map((line, i) => line.map((one, j) => one * (values[i] ?? 0) * (values[j] ?? 0))),
  });
}

/** From here on Student's t no longer moves. */
const DEGREES_MOST = 5_000;

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, one, i) => sum + one * (b[i] ?? 0), 0);

/** Adds factor x v v'. */
function addProduct(matrix: number[][], vector: readonly number[], factor: number): void {
  for (const [i, line] of matrix.entries()) {
    for (const j of line.keys()) line[j] = (line[j] ?? 0) + factor * (vector[i] ?? 0) * (vector[j] ?? 0);
  }
}

export const errorsOf = ({ matrix }: Covariance): readonly number[] =>
  matrix.map((line, i) => Math.sqrt(line[i] ?? Number.NaN));

/** C g. */
export const timesGradient = ({ matrix }: Covariance, gradient: readonly number[]): readonly number[] =>
  matrix.map((line) => dot(line, gradient));

/** sqrt(g'C g): the standard error of what has the gradient g. */
export const errorAlong = (covariance: Covariance, gradient: readonly number[]): number =>
  Math.sqrt(Math.max(0, dot(gradient, timesGradient(covariance, gradient))));
