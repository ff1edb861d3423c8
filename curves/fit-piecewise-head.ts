/** Fits a monotone cubic to head points that no sum of powers meets. */

import { fitQuality } from './fit-quality.ts';
import { groupedByFlow } from './group-points.ts';
import type { PiecewiseHead, SumOfPowers } from './head-curve.ts';
import type { FullSpeedPoint, HeadPoints } from './head-points.ts';
import { knotsAt, monotoneKnots } from './monotone-cubic.ts';

/** A sum of powers whose root mean square residual is within this share of the largest head meets the points. */
export const MET = 0.01;
const NEEDED_KNOTS = 5;

/**
 * The cubic through the groups of points (`groupedByFlow`), each of which is a knot; undefined where the sum of powers
 * meets the points, where there are fewer than five knots, or where the heads of the knots do not fall strictly (of
 * points that droop: rise strictly to one greatest head, then fall strictly).
 */
export function piecewiseHead(entered: HeadPoints, sum: SumOfPowers | undefined): PiecewiseHead | undefined {
  const { points, flowScale, drooping } = entered;
  if (sum !== undefined && isMet(sum, points)) return undefined;
  const places = groupedByFlow(points);
  if (places.length < NEEDED_KNOTS || !turnsRightly(places, drooping)) return undefined;
  const knots = monotoneKnots(places);
  const residuals = points.map(({ flow, head }) => head - knotsAt(knots, flow));
  return {
    shape: 'piecewise',
    knots,
    flowScale,
    range: { min: Math.min(...points.map(({ flow }) => flow)), max: flowScale },
    ...fitQuality({ values: points.map(({ head }) => head), residuals, parameters: knots.length }),
    residuals,
    sumResiduals: sum?.residuals ?? null,
    drooping,
  };
}

function isMet({ residuals }: SumOfPowers, points: readonly FullSpeedPoint[]): boolean {
  const largest = Math.max(...points.map(({ head }) => Math.abs(head)));
  const squares = residuals.reduce((total, residual) => total + residual ** 2, 0);
  return Math.sqrt(squares / residuals.length) <= MET * largest;
}

function turnsRightly(places: readonly FullSpeedPoint[], drooping: boolean): boolean {
  const falls = places.slice(1).map(({ head }, index) => head - (places[index]?.head ?? head));
  if (!drooping) return falls.every((fall) => fall < 0);
  const summit = falls.findIndex((fall) => fall <= 0);
  return summit > 0 && falls.slice(summit).every((fall) => fall < 0);
}
