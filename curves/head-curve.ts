/** Gives the head of a pump against its flow, as fitted. */
import { atSpeed } from './affinity.ts';
import { type Knot, knotsAt, knotsSlopeAt, knotsTurn } from './monotone-cubic.ts';
import { powerSumAt, powerSumSlopeAt, turningPoints } from './power-sum.ts';

interface FittedHead {
  /** Largest flow of the points reduced to full speed [m3/s]. */
  readonly flowScale: number;
  /** Flows of the points reduced to full speed [m3/s]. */
  readonly range: { readonly min: number; readonly max: number };
  /** Of the points about the curve. */
  readonly r2: number | null;
  /** [m], with `degreesOfFreedom`. */
  readonly standardError: number | null;
  readonly degreesOfFreedom: number;
  /** Entered less fitted head [m], reduced to full speed, in the order of the points given. */
  readonly residuals: readonly number[];
  /** The points have their greatest head at a flow above the least. */
  readonly drooping: boolean;
}

interface SumShape {
  /** Powers of x = flow / flowScale, ascending, 0 first. */
  readonly powers: readonly number[];
  /** One a power [m]: H = sum c_p x^p. */
  readonly coefficients: readonly number[];
}

/** A sum of powers, chosen by its error at points left out. */
export interface SumOfPowers extends FittedHead, SumShape {
  readonly shape: 'sum-of-powers';
  /** Root mean square error at a point left out of the fit [m]. */
  readonly leaveOneOut: number;
}

/** A parabola about flow 0, assumed where two flows are entered. */
export interface AssumedHead extends FittedHead, SumShape {
  readonly shape: 'assumed';
}

/** A monotone cubic from knot to knot, where no sum of powers meets the points. */
export interface PiecewiseHead extends FittedHead {
  readonly shape: 'piecewise';
  /** By rising flow at full speed [m3/s]. */
  readonly knots: readonly Knot[];
  /** Entered less fitted head [m] of the best sum of powers; null where none falls. */
  readonly sumResiduals: readonly number[] | null;
}

/** Made by `fitHeadCurve` alone. Plain JSON: stored as fitted, reloaded bit for bit. At full speed throughout. */
export type HeadCurve = SumOfPowers | AssumedHead | PiecewiseHead;

/**
 * The head [m] at full speed and `flow` [m3/s] of 0 or more: H = sum c_p (Q/flowScale)^p, or the cubic between knots;
 * beyond flowScale, the largest flow entered, the tangent there (the steeper of it and the last chord between knots).
 */
export function headAt(curve: HeadCurve, flow: number): number {
  if (curve.shape === 'piecewise') return knotsAt(curve.knots, flow);
  const x = flow / curve.flowScale;
  if (x <= 1) return powerSumAt(curve, x);
  return powerSumAt(curve, 1) + powerSumSlopeAt(curve, 1) * (x - 1);
}

/** The slope dH/dQ [m/(m3/s)] at full speed and `flow` [m3/s]; constant beyond flowScale. */
export const headSlopeAt = (curve: HeadCurve, flow: number): number =>
  curve.shape === 'piecewise'
    ? knotsSlopeAt(curve.knots, flow)
    : powerSumSlopeAt(curve, Math.min(1, flow / curve.flowScale)) / curve.flowScale;

/**
 * Head [m] and slope dH/dQ [m/(m3/s)] at `flow` [m3/s] and `speedRatio` r [-], by the affinity laws:
 * H = r^2 H0(Q/r), dH/dQ = r H0'(Q/r). A pump that stands still gives no head.
 */
export function headAtSpeed(
  curve: HeadCurve,
  { flow, speedRatio }: { readonly flow: number; readonly speedRatio: number },
): { readonly head: number; readonly slope: number } {
  if (speedRatio === 0) return { head: 0, slope: 0 };
  const fullSpeedFlow = flow / speedRatio;
  const { head } = atSpeed({ flow: fullSpeedFlow, head: headAt(curve, fullSpeedFlow), speedRatio });
  return { head, slope: speedRatio * headSlopeAt(curve, fullSpeedFlow) };
}

/**
 * The flows [m3/s] between 0 and flowScale at which a drooping curve at full speed turns from rising to falling or back,
 * ascending; at a speed ratio r they move to r times that. Empty for other curves: what they rise is rounding.
 */
export function risingFlows(curve: HeadCurve): readonly number[] {
  if (!curve.drooping) return [];
  return curve.shape === 'piecewise'
    ? knotsTurn(curve.knots)
    : turningPoints(curve).map((x) => x * curve.flowScale);
}
