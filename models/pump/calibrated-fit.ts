/** Multiplies the head and power of the curves of a pump. */
import type { HeadCurve } from '../../curves/head-curve.ts';
import type { PowerLaw } from '../../curves/power-law.ts';
import type { Factors } from './factors.ts';
import type { PumpFit } from './pump-model.ts';

/**
 * The curves with H' = head x H and P' = power x P, standby included, at every flow and speed; factors [-] above 0.
 * Errors of the head's fit change with it.
 */
export function calibratedFit(fit: PumpFit, { head, power }: Pick<Factors, 'head' | 'power'>): PumpFit {
  if (head === 1 && power === 1) return fit;
  return { ...fit, headCurve: timesHead(fit.headCurve, head), powerLaw: timesPower(fit.powerLaw, power) };
}

const timesHead = (curve: HeadCurve, factor: number): HeadCurve => ({
  ...curve,
  coefficients: curve.coefficients.map((coefficient) => factor * coefficient),
  standardError: curve.standardError === null ? null : factor * curve.standardError,
  residuals: curve.residuals.map((residual) => factor * residual),
  leaveOneOut: factor * curve.leaveOneOut,
});

const timesPower = (law: PowerLaw, factor: number): PowerLaw => ({
  ...law,
  coefficient: factor * law.coefficient,
  standbyPower: factor * law.standbyPower,
});

/** Friction times a factor [-], and the head of the pump of some curves times another [-]. */
export interface CalibratedAssurance {
  readonly calibration: { readonly friction: number; readonly head: number; readonly fit: PumpFit };
}
