/** Measures how well a least-squares fit meets its points. */

/** How well a fit meets its points. */
export interface FitQuality {
  /** 1 - SSE/SST [-]; null where the values do not vary. */
  readonly r2: number | null;
  /** sqrt(SSE/degrees of freedom) [unit of the values]; null without degrees of freedom. */
  readonly standardError: number | null;
  /** Values less coefficients, at least 0 [-]. */
  readonly degreesOfFreedom: number;
}

/** A mean of equal values may miss them by rounding: spreads this small, relative to the largest value, are none. */
const ROUNDING = 4 * Number.EPSILON;

/**
 * The coefficient of determination r2 = 1 - SSE/SST about the mean (not a squared correlation), the residual standard
 * error s = sqrt(SSE/(n - parameters)) and its degrees of freedom.
 *
 * @param fit values that were fitted; residuals, value less fitted value [unit of the values]; parameters, the number
 *   of coefficients [-] that were fitted, the constant included.
 * @returns r2 [-], which falls below 0 where the fit is worse than the mean; s [unit of the values].
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
