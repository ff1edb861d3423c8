/** Measures how far entered points lie from the curve fitted to them, as shares that no unit changes. */
import { powerAt } from '../../curves/power-law.ts';
import { speedRatioAt } from '../../curves/speed-map.ts';
import type { PumpModel } from '../pump/pump-model.ts';

export interface Misfit {
  /** Root mean square over the points, a share [-]. */
  readonly meanSquareRoot: number;
  /** Place of the point farthest off [-], and how far, a share [-]. */
  readonly farthest: { readonly index: number; readonly share: number };
}

/** Residuals of the head, reduced to full speed, as shares of the largest entered head likewise reduced. */
export function headMisfit({ entered: pump, fit: { headCurve, speedMap } }: PumpModel): Misfit {
  const reduced = pump.headPoints.map(({ head, setting }) => head / speedRatioAt(speedMap, setting) ** 2);
  const largest = Math.max(...reduced.map(Math.abs));
  // A curve from knot to knot meets its points whatever they are: that no sum of powers does shows how they disagree.
  const residuals = headCurve.shape === 'piecewise' ? (headCurve.sumResiduals ?? []) : headCurve.residuals;
  return misfitOf(residuals.map((residual) => (largest === 0 ? 0 : residual / largest)));
}

/**
 * Entered over fitted power, standby apart, less 1. The law is fitted to the logarithm, whose residuals have the mean 0;
 * one multiplied as a whole, by a calibration, still goes through its points as well or badly as it did.
 */
export function powerMisfit({ entered: pump, fit: { powerLaw, speedMap } }: PumpModel): Misfit {
  const { standbyPower, flowScale, flowCentre } = powerLaw;
  const logarithms = pump.powerPoints.map(({ power, setting, flow }) => {
    const speedRatio = speedRatioAt(speedMap, setting);
    // A point without flow counts as taken at the mean of the others.
    const taken = flow ?? (flowScale ?? 0) * (flowCentre ?? 0) * speedRatio;
    const fitted = powerAt(powerLaw, { flow: taken, speedRatio });
    return Math.log((power - pump.standbyPower) / (fitted - standbyPower));
  });
  const mean = logarithms.reduce((sum, one) => sum + one, 0) / Math.max(1, logarithms.length);
  return misfitOf(logarithms.map((one) => Math.expm1(one - mean)));
}

function misfitOf(shares: readonly number[]): Misfit {
  let farthest = { index: 0, share: 0 };
  for (const [index, share] of shares.entries()) {
    if (Math.abs(share) > Math.abs(farthest.share)) farthest = { index, share };
  }
  const total = shares.reduce((sum, share) => sum + share ** 2, 0);
  return { meanSquareRoot: Math.sqrt(total / Math.max(1, shares.length)), farthest };
}
