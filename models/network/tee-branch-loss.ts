/** Finds the head that a side branch loses where it leaves a tee of 90 degrees. */
import { GRAVITY } from '../physics/gravity.ts';

/** What a side branch loses at its tee, per square of a flow. */
export interface TeeBranchLoss {
  /** Of the flow that reaches the tee [s2/m5]. */
  readonly combined: number;
  /** Of the side branch's own flow [s2/m5]. */
  readonly side: number;
}

/** Share of its own velocity head that a side branch of an equal tee loses. */
const SIDE_COEFFICIENT = 0.6;

const velocityHeadPerFlow = (bore: number): number => 1 / (2 * GRAVITY * ((Math.PI / 4) * bore ** 2) ** 2);

/**
 * The loss at the side of an equal tee of 90 degrees, h = (v_c^2 + 0.6 v_b^2)/2g, v_c in the leg that reaches the tee, v_b
 * in the side branch.
 *
 * @param tee bores of leg and side [m] above 0; multiplier [-] of the whole loss, as of friction.
 * @returns what `combinedHead` and `sideHead` take.
 * Accuracy: within 0.09 velocity heads of the published diverging tee (test/models/network/tee-branch-loss.test.ts).
 */
export const teeBranchLoss = (tee: {
  readonly legBore: number;
  readonly sideBore: number;
  readonly multiplier: number;
}): TeeBranchLoss => ({
  combined: tee.multiplier * velocityHeadPerFlow(tee.legBore),
  side: tee.multiplier * SIDE_COEFFICIENT * velocityHeadPerFlow(tee.sideBore),
});

/** The same tee with `factor` [-] times its loss. */
export const teeLossTimes = ({ combined, side }: TeeBranchLoss, factor: number): TeeBranchLoss => ({
  combined: factor * combined,
  side: factor * side,
});

/** The part [m] that follows the flow reaching the tee [m3/s]: v_c^2/2g, 0 where that runs backwards. */
export const combinedHead = ({ combined }: TeeBranchLoss, combinedFlow: number): number =>
  combined * Math.max(0, combinedFlow) ** 2;

/** The part [m] that follows the side branch's own flow [m3/s]: 0.6 v_b^2/2g, negative where that runs backwards. */
export const sideHead = ({ side }: TeeBranchLoss, sideFlow: number): number =>
  side * sideFlow * Math.abs(sideFlow);

/** Head [m] lost at the tee by a side branch; one that runs backwards does not lose the part of the combined flow. */
export const teeHead = (
  loss: TeeBranchLoss,
  { combinedFlow, sideFlow }: { readonly combinedFlow: number; readonly sideFlow: number },
): number => (sideFlow > 0 ? combinedHead(loss, combinedFlow) : 0) + sideHead(loss, sideFlow);
