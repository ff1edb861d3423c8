/** Finds the error of a least-squares fit at points that it has not seen. */

/** A point with a leverage this near 1 is met by any data: leaving it out leaves nothing to predict it with. */
const FREE_LEVERAGE = 1e-12;

/**
 * The leave-one-out mean square of a linear fit, by the identity (PRESS) mean of (e_i/(1 - h_i))^2, which equals
 * refitting without each point in turn.
 *
 * @param fit residuals e [any] and leverages h [-], one a point.
 * @returns the mean square [square of the unit of e]; null where a leverage is within 1e-12 of 1.
 * Source: Allen (1974), The relationship between variable selection and data augmentation, Technometrics 16.
 */
export function leaveOneOutMeanSquare({
  residuals,
  leverages,
}: {
  readonly residuals: readonly number[];
  readonly leverages: readonly number[];
}): number | null {
  let total = 0;
  for (const [index, residual] of residuals.entries()) {
    const free = 1 - (leverages[index] ?? 1);
    if (free <= FREE_LEVERAGE) return null;
    total += (residual / free) ** 2;
  }
  return total / residuals.length;
}
