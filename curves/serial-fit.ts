/** Fits lines and steps to values whose errors last: generalised least squares with correlation that falls with time. */
import { positiveInverse } from './positive-inverse.ts';

export interface SerialData {
  /** [any unit of time], rising strictly. */
  readonly times: readonly number[];
  /** [any], one list a parameter, each as long as `times`. */
  readonly columns: readonly (readonly number[])[];
  /** [any] */
  readonly values: readonly number[];
}

export interface SerialFit {
  /** [values per column] */
  readonly coefficients: readonly number[];
  /** (X'R^-1 X)^-1 [1/columns^2]: the covariance of the coefficients where the errors have a variance of 1. */
  readonly inverse: readonly (readonly number[])[];
  /** (y - Xb)'R^-1 (y - Xb) [values^2]. */
  readonly squares: number;
  /** ln det R + ln det X'R^-1 X [-]. */
  readonly logDeterminant: number;
}

/**
 * b = (X'R^-1 X)^-1 X'R^-1 y with R_ij = phi^|ti - tj|: each row less phi^gap of the one before, over sqrt(1 - phi^(2 gap)), is
 * free of correlation. Null where the columns do not determine the coefficients.
 *
 * @param phi correlation [-] from one unit of time to the next, 0 or more and under 1.
 */
export function serialFit({ times, columns, values }: SerialData, phi: number): SerialFit | null {
  const all = [...columns, values];
  const width = columns.length;
  const products = new Float64Array(all.length ** 2);
  const row = new Float64Array(all.length);
  let logCorrelations = 0;
  for (let i = 0; i < times.length; i += 1) {
    const carried = i === 0 ? 0 : phi ** ((times[i] ?? 0) - (times[i - 1] ?? 0));
    const own = 1 - carried ** 2;
    logCorrelations += Math.log(own);
    const scale = 1 / Math.sqrt(own);
    for (let j = 0; j < all.length; j += 1) {
      const column = all[j] ?? values;
      const entry = ((column[i] ?? 0) - (i === 0 ? 0 : carried * (column[i - 1] ?? 0))) * scale;
      row[j] = entry;
      for (let k = 0; k <= j; k += 1) {
        const place = j * all.length + k;
        products[place] = (products[place] ?? 0) + entry * (row[k] ?? 0);
      }
    }
  }
  const product = (j: number, k: number): number =>
    products[Math.max(j, k) * all.length + Math.min(j, k)] ?? Number.NaN;
  const found = positiveInverse(columns.map((_, j) => columns.map((__, k) => product(j, k))));
  if (found === null) return null;
  const { inverse, logDeterminant } = found;
  const right = columns.map((_, j) => product(width, j));
  const coefficients = inverse.map((weights) => dot(weights, right));
  const squares = Math.max(0, product(width, width) - dot(coefficients, right));
  return { coefficients, inverse, squares, logDeterminant: logCorrelations + logDeterminant };
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, one, i) => sum + one * (b[i] ?? 0), 0);

/** Variance [-] of the mean of values whose errors have a variance of 1: n^-2 sum phi^|ti - tj|; times rise, phi [-]. */
export function meanVariance(times: readonly number[], phi: number): number {
  let [shared, sum] = [0, 0];
  for (const [i, time] of times.entries()) {
    shared = i === 0 ? 0 : (shared + 1) * phi ** (time - (times[i - 1] ?? 0));
    sum += 1 + 2 * shared;
  }
  return sum / times.length ** 2;
}
