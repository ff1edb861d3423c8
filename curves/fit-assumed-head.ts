/** Assumes the head curve of a pump whose points have two flows, one of them 0. */

import { meanOf } from './group-points.ts';
import type { AssumedHead } from './head-curve.ts';
import type { FullSpeedPoint } from './head-points.ts';

/** A parabola about flow 0: common practice, between a pump that falls evenly and one that falls late. */
const PARABOLA = 2;
/** The exponents that the curve may have as well. */
export const OTHER_EXPONENTS = [1, 3] as const;

/**
 * H = H0 - (H0 - H1)(Q/Q1)^2 through the mean heads at flow 0 and at the other flow Q1; undefined where H1 is not below H0
 * by more than `rounding` [m].
 */
export function assumedHead(
  points: readonly FullSpeedPoint[],
  { flowScale, rounding }: { readonly flowScale: number; readonly rounding: number },
): AssumedHead | undefined {
  const [shutoff, other] = [true, false].map((isAtRest) =>
    meanOf(points.filter(({ flow }) => (flow === 0) === isAtRest).map(({ head }) => head)),
  );
  if (shutoff === undefined || other === undefined || !(other < shutoff - rounding)) return undefined;
  return {
    shape: 'assumed',
    powers: [0, PARABOLA],
    coefficients: [shutoff, other - shutoff],
    flowScale,
    range: { min: 0, max: flowScale },
    r2: null,
    standardError: null,
    degreesOfFreedom: 0,
    residuals: points.map(({ flow, head }) => head - (flow === 0 ? shutoff : other)),
    drooping: false,
  };
}

/** The curves through the same two places that fall evenly, and later than a parabola. */
export const otherShapes = (curve: AssumedHead): readonly AssumedHead[] =>
  OTHER_EXPONENTS.map((exponent) => ({ ...curve, powers: [0, exponent] }));
