/** Gives the head of a pump against its flow, as fitted. */
import { atSpeed } from './affinity.ts';
import { powerSumAt, powerSumSlopeAt, turningPoints } from './power-sum.ts';

/** Made by `fitHeadCurve` alone. Plain JSON: stored as fitted, reloaded bit for bit. At full speed throughout. */
export interface HeadCurve {
  /** Powers of x = flow / flowScale, ascending, 0 first. */
  readonly powers: readonly number[];
  /** One a power [m]: H = sum c_p x^p. */
  readonly coefficients: readonly number[];
  /** Largest flow of the points reduced to full speed [m3/s]. */
  readonly flowScale: number;
  /** Flows of the points reduced to full speed [m3/s]. */
  readonly range: { readonly min: number; readonly max: number };
  readonly r2: number | null;
  /** [m], with `degreesOfFreedom`. */
  readonly standardError: number | null;
  readonly degreesOfFreedom: number;
  /** Entered less fitted head [m], reduced to full speed, in the order of the points given. */
  readonly residuals: readonly number[];
  /** Root mean square error at a point left out of the fit [m]. */
  readonly leaveOneOut: number;
  /** The points have their greatest head at a flow above the least. */
  readonly drooping: boolean;
}

/**
 * The head [m] at full speed and `flow` [m3/s] of 0 or more: H = sum c_p (Q/flowScale)^p; beyond flowScale, the largest
 * flow entered, the tangent there.
 */
export function headAt(curve: HeadCurve, flow: number): number {
  const x = flow / curve.flowScale;
  if (x <= 1) return powerSumAt(curve, x);
  return powerSumAt(curve, 1) + powerSumSlopeAt(curve, 1) * (x - 1);
}

/** The slope dH/dQ [m/(m3/s)] at full speed and `flow` [m3/s]; constant beyond flowScale. */
export const headSlopeAt = (curve: HeadCurve, flow: number): number =>
  powerSumSlopeAt(curve, Math.min(1, flow / curve.flowScale)) / curve.flowScale;

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
export const risingFlows = (curve: HeadCurve): readonly number[] =>
  curve.drooping ? turningPoints(curve).map((x) => x * curve.flowScale) : [];
