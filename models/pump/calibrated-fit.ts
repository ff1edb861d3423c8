/** Multiplies the head and power of the curves of a pump. */
import type { HeadCurve } from '../../curves/head-curve.ts';
import type { PowerLaw, SpeedLaw } from '../../curves/power-law.ts';
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

function timesHead(curve: HeadCurve, factor: number): HeadCurve {
  const times = (heads: readonly number[]) => heads.map((head) => factor * head);
  const scaled = {
    standardError: curve.standardError === null ? null : factor * curve.standardError,
    residuals: times(curve.residuals),
  };
  switch (curve.shape) {
    case 'piecewise': {
      const knots = curve.knots.map(({ flow, head, slope }) => ({
        flow,
        head: factor * head,
        slope: factor * slope,
      }));
      return { ...curve, ...scaled, knots, sumResiduals: curve.sumResiduals && times(curve.sumResiduals) };
    }
    case 'assumed':
      return { ...curve, ...scaled, coefficients: times(curve.coefficients) };
    case 'sum-of-powers':
      return {
        ...curve,
        ...scaled,
        coefficients: times(curve.coefficients),
        leaveOneOut: factor * curve.leaveOneOut,
      };
  }
}

function timesPower(law: PowerLaw, factor: number): PowerLaw {
  const times = <Law extends SpeedLaw>(one: Law): Law => ({
    ...one,
    fixedPower: factor * one.fixedPower,
    coefficient: factor * one.coefficient,
  });
  return {
    ...times(law),
    alternatives: law.alternatives.map(times),
    standbyPower: factor * law.standbyPower,
  };
}

/** Friction times a factor [-], and the head of the pump of some curves times another [-]. */
export interface CalibratedAssurance {
  readonly calibration: { readonly friction: number; readonly head: number; readonly fit: PumpFit };
}
