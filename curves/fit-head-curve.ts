/** Fits a head curve to the points that a user read off a pump's chart. */
import { toFullSpeed } from './affinity.ts';
import { chooseCandidate } from './choose-candidate.ts';
import { areDistinct, countDistinct } from './distinct.ts';
import { fitQuality } from './fit-quality.ts';
import type { HeadCurve } from './head-curve.ts';
import { HEAD_CURVE_CANDIDATES } from './head-curve-candidates.ts';
import { leastSquares } from './least-squares.ts';
import { leaveOneOutMeanSquare } from './leave-one-out.ts';
import { greatestSlope, powerSumSlopeAt } from './power-sum.ts';
import { failed, type Result, success } from './result.ts';

/** Why no head curve fits: index [-] of a point in the list given, speedRatio [-], distinct and needed flows [-]. */
export type HeadCurveFailure =
  | { readonly code: 'speed-not-positive'; readonly index: number; readonly speedRatio: number }
  | { readonly code: 'too-few-distinct-flows'; readonly distinct: number; readonly needed: number }
  | { readonly code: 'no-falling-curve' };

interface Point {
  readonly flow: number;
  readonly head: number;
}

interface Trial {
  readonly powers: readonly number[];
  readonly coefficients: readonly number[];
  readonly residuals: readonly number[];
  readonly meanSquare: number;
}

const NEEDED_FLOWS = 3;
/** Slopes, head differences and errors below this share of the largest head are rounding. */
const ROUNDING = 1e-9;

/**
 * The head curve H = a + sum b_p x^p, x = Q/(largest reduced flow), through points reduced to full speed by the
 * affinity laws: ordinary least squares on each candidate set of powers, then the simplest of those whose
 * leave-one-out error is within 1.05 of the least.
 *
 * `flow` [m3/s] 0 or more, `head` [m], `speedRatio` [-] above 0, the true one. A candidate with m powers needs m + 2
 * distinct flows. One that rises anywhere in 0 <= x <= 1 is dropped unless the points themselves droop; one whose
 * tangent at x = 1 does not fall is always dropped, because the curve goes on along it. Points whose greatest head
 * stands at the largest flow have no falling curve.
 *
 * Accuracy: meets published pump tables within 0.5 % of the head (test/curves/fit-head-curve.test.ts).
 */
export function fitHeadCurve(
  points: readonly (Point & { readonly speedRatio: number })[],
): Result<HeadCurve, HeadCurveFailure> {
  const still = points.findIndex((point) => !(point.speedRatio > 0));
  if (still >= 0) {
    return failed({ code: 'speed-not-positive', index: still, speedRatio: points[still]?.speedRatio ?? 0 });
  }
  const reduced = points.map(toFullSpeed);
  const flows = reduced.map((point) => point.flow);
  const distinct = countDistinct(flows);
  if (distinct < NEEDED_FLOWS) {
    return failed({ code: 'too-few-distinct-flows', distinct, needed: NEEDED_FLOWS });
  }

  const rounding = ROUNDING * Math.max(...reduced.map((point) => Math.abs(point.head)));
  const flowScale = Math.max(...flows);
  if (pointsRise(reduced, { flowScale, rounding })) return failed({ code: 'no-falling-curve' });
  const drooping = pointsDroop(reduced, rounding);
  const trials = HEAD_CURVE_CANDIDATES.filter((powers) => distinct >= powers.length + 2)
    .flatMap((powers) => tryPowers(powers, { points: reduced, flowScale }))
    .filter(
      (trial) => powerSumSlopeAt(trial, 1) < -rounding && (drooping || greatestSlope(trial) <= rounding),
    );
  const chosen = chooseCandidate(trials, rounding ** 2);
  if (chosen === undefined) return failed({ code: 'no-falling-curve' });

  return success({
    powers: chosen.powers,
    coefficients: chosen.coefficients,
    flowScale,
    range: { min: Math.min(...flows), max: flowScale },
    ...fitQuality({
      values: reduced.map((point) => point.head),
      residuals: chosen.residuals,
      parameters: chosen.powers.length,
    }),
    residuals: chosen.residuals,
    leaveOneOut: Math.sqrt(chosen.meanSquare),
    drooping,
  });
}

/** The greatest head stands at the largest flow: nothing shows where the curve would fall, so no fit can be trusted. */
function pointsRise(
  points: readonly Point[],
  { flowScale, rounding }: { readonly flowScale: number; readonly rounding: number },
): boolean {
  const others = points.filter((point) => areDistinct(point.flow, flowScale)).map((point) => point.head);
  return Math.max(...points.map((point) => point.head)) > Math.max(...others) + rounding;
}

/** The greatest head stands at a flow above the least; an equal head at the least flow is no droop. */
function pointsDroop(points: readonly Point[], rounding: number): boolean {
  const least = Math.min(...points.map((point) => point.flow));
  const atLeast = points.filter((point) => !areDistinct(point.flow, least)).map((point) => point.head);
  return Math.max(...points.map((point) => point.head)) > Math.max(...atLeast) + rounding;
}

/** The fit on one set of powers beside a constant: a list of one, or of none where the points do not settle it. */
function tryPowers(
  candidate: readonly number[],
  { points, flowScale }: { readonly points: readonly Point[]; readonly flowScale: number },
): readonly Trial[] {
  const powers = [0, ...candidate];
  const fit = leastSquares(
    points.map((point) => powers.map((power) => (point.flow / flowScale) ** power)),
    points.map((point) => point.head),
  );
  if (!fit.ok) return [];
  const { coefficients, residuals } = fit.value;
  const meanSquare = leaveOneOutMeanSquare(fit.value);
  return meanSquare === null ? [] : [{ powers, coefficients, residuals, meanSquare }];
}
