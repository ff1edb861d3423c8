/** The head curve of points that a test expects a sum of powers to meet. */
import { fitHeadCurve } from '../../curves/fit-head-curve.ts';
import type { SumOfPowers } from '../../curves/head-curve.ts';
import type { FullSpeedPoint } from '../../curves/head-points.ts';
import { expectValue } from './expect-value.ts';

export function sumOfPowersThrough(
  points: readonly (FullSpeedPoint & { readonly speedRatio: number })[],
): SumOfPowers {
  const curve = expectValue(fitHeadCurve(points));
  if (curve.shape !== 'sum-of-powers') throw new Error(`expected a sum of powers, got ${curve.shape}`);
  return curve;
}
