/** Fits the power law whose exponent of speed is free. */

import { fitTerms, type PowerFrame } from './power-frame.ts';
import type { SpeedLaw } from './power-law.ts';
import type { PowerPoint } from './power-points.ts';

/** A law, and how it meets ln(P - standby) of the points it was fitted to. */
export interface FittedLaw {
  readonly law: SpeedLaw;
  /** Of ln(P - standby) [-], one a point. */
  readonly residuals: readonly number[];
  /** [-], one a point. */
  readonly leverages: readonly number[];
  /** How many figures were fitted [-]. */
  readonly parameters: number;
}

/**
 * P = standby + c r^k g(x): one least-squares fit of ln(P - standby) on [1, ln r, x, x^2].
 *
 * `logPowers` are ln(P - standby), P in W, one a point. Null where the speeds are too near to each other to determine k.
 */
export function exponentLaw(
  points: readonly PowerPoint[],
  { frame, logPowers }: { readonly frame: PowerFrame; readonly logPowers: readonly number[] },
): FittedLaw | null {
  const columns = ({ speedRatio }: PowerPoint) => [1, Math.log(speedRatio)];
  const fit = fitTerms(points, { frame, values: logPowers, columns });
  if (fit === null) return null;
  const [constant = 0, exponent = 0, ...flowTerms] = fit.coefficients;
  return {
    law: { fixedPower: 0, coefficient: Math.exp(constant), exponent, flowTerms },
    residuals: fit.residuals,
    leverages: fit.leverages,
    parameters: fit.coefficients.length,
  };
}
