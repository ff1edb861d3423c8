/** How well a least-squares fit meets its points. */

export interface FitQuality {
  /** 1 - SSE/SST; null when the values do not vary. */
  readonly r2: number | null;
  /** sqrt(SSE / degrees of freedom), in the unit of the values; null without degrees of freedom. */
  readonly standardError: number | null;
  readonly degreesOfFreedom: number;
}

/** A mean of equal values may miss them by rounding: spreads this small, relative to the largest value, are none. */
const ROUNDING = 4 * Number.EPSILON;

/**
 * The coefficient of determination r2 = 1 - SSE/SST about the mean (not a squared correlation), the residual standard
 * error s = sqrt(SSE/(n - parameters)) and its degrees of freedom.
 *
 * `values` are what was fitted, `residuals` value less fitted value, `parameters` the number of coefficients fitted, the
 * constant included. r2 falls below 0 when the fit is worse than the mean.
 */
export function fitQuality({
  values,
  residuals,
  parameters,
}: {
  readonly values: readonly number[];
  readonly residuals: readonly number[];
  readonly parameters: number;
}): FitQuality {
  const mean = values.reduce((total, value) => total + value, 0) / values.length;
  const total = sumOfSquares(values.map((value) => value - mean));
  const error = sumOfSquares(residuals);
  const noSpread = values.length * (ROUNDING * Math.max(...values.map(Math.abs))) ** 2;
  const degreesOfFreedom = Math.max(0, values.length - parameters);
  return {
    r2: total <= noSpread ? null : 1 - error / total,
    standardError: degreesOfFreedom === 0 ? null : Math.sqrt(error / degreesOfFreedom),
    degreesOfFreedom,
  };
}

const sumOfSquares = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value ** 2, 0);
