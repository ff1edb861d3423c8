/** Fits a head curve to the points that a user read off a pump's chart. */
import { toFullSpeed } from './affinity.ts';
import { areDistinct, countDistinct } from './distinct.ts';
import { assumedHead } from './fit-assumed-head.ts';
import { piecewiseHead } from './fit-piecewise-head.ts';
import { sumOfPowers } from './fit-sum-of-powers.ts';
import type { HeadCurve } from './head-curve.ts';
import type { FullSpeedPoint, HeadPoints } from './head-points.ts';
import { failed, type Result, success } from './result.ts';

/** Why no head curve fits: index [-] of a point in the list given, speedRatio [-], distinct and needed flows [-]. */
export type HeadCurveFailure =
  | { readonly code: 'speed-not-positive'; readonly index: number; readonly speedRatio: number }
  | { readonly code: 'too-few-distinct-flows'; readonly distinct: number; readonly needed: number }
  | { readonly code: 'no-falling-curve' };

const NEEDED_FLOWS = 3;
/** Slopes, head differences and errors below this share of the largest head are rounding. */
const ROUNDING = 1e-9;

/**
 * The head curve through points reduced to full speed by the affinity laws: a sum of powers (`sumOfPowers`), a monotone
 * cubic where no such sum meets them (`piecewiseHead`), a parabola where there are two distinct flows of which one is 0
 * (`assumedHead`).
 *
 * `flow` [m3/s] 0 or more, `head` [m], `speedRatio` [-] above 0, the true one. Points whose greatest head is at the
 * largest flow have no falling curve.
 *
 * Accuracy: meets published pump tables within 0.5 % of the head (test/curves/fit-head-curve.test.ts).
 */
export function fitHeadCurve(
  points: readonly (FullSpeedPoint & { readonly speedRatio: number })[],
): Result<HeadCurve, HeadCurveFailure> {
  const still = points.findIndex((point) => !(point.speedRatio > 0));
  if (still >= 0) {
    return failed({ code: 'speed-not-positive', index: still, speedRatio: points[still]?.speedRatio ?? 0 });
  }
  const reduced = points.map(toFullSpeed);
  const flows = reduced.map((point) => point.flow);
  const distinct = countDistinct(flows);
  const hasShutoff = distinct === 2 && Math.min(...flows) === 0;
  if (distinct < NEEDED_FLOWS && !hasShutoff) {
    return failed({ code: 'too-few-distinct-flows', distinct, needed: NEEDED_FLOWS });
  }
  const rounding = ROUNDING * Math.max(...reduced.map((point) => Math.abs(point.head)));
  const flowScale = Math.max(...flows);
  if (hasShutoff) {
    const assumed = assumedHead(reduced, { flowScale, rounding });
    return assumed === undefined ? failed({ code: 'no-falling-curve' }) : success(assumed);
  }
  if (pointsRise(reduced, { flowScale, rounding })) return failed({ code: 'no-falling-curve' });
  const entered: HeadPoints = {
    points: reduced,
    flowScale,
    rounding,
    drooping: pointsDroop(reduced, rounding),
    distinct,
  };
  const sum = sumOfPowers(entered);
  const curve = piecewiseHead(entered, sum) ?? sum;
  return curve === undefined ? failed({ code: 'no-falling-curve' }) : success(curve);
}

/** The greatest head is at the largest flow: nothing shows where the curve would fall, so no fit can be trusted. */
function pointsRise(
  points: readonly FullSpeedPoint[],
  { flowScale, rounding }: { readonly flowScale: number; readonly rounding: number },
): boolean {
  const others = points.filter((point) => areDistinct(point.flow, flowScale)).map((point) => point.head);
  return Math.max(...points.map((point) => point.head)) > Math.max(...others) + rounding;
}

/** The greatest head is at a flow above the least; an equal head at the least flow is no droop. */
function pointsDroop(points: readonly FullSpeedPoint[], rounding: number): boolean {
  const least = Math.min(...points.map((point) => point.flow));
  const atLeast = points.filter((point) => !areDistinct(point.flow, least)).map((point) => point.head);
  return Math.max(...points.map((point) => point.head)) > Math.max(...atLeast) + rounding;
}
