/** The heads that the branches of a tee lose there at known flows. */
import { type TeeBranchLoss, type TeeFlows, teeHead, teeLosses } from '../network/tee-branch-loss.ts';

/** The leg that enters a tee: bore [m], null where no pipe leads to it; flow [m3/s]. */
export interface TeeLeg {
  readonly bore: number | null;
  readonly flow: number;
  readonly frictionMultiplier: number;
}

/** Bore [m] of the first pipe of a side, null where it has none and counts as wide as the leg; flow [m3/s] outward. */
export interface TeeSide {
  readonly bore: number | null;
  readonly flow: number;
}

/** Head [m] that a side loses, whatever the bores of the other sides. */
export function headAtSide(leg: TeeLeg, side: TeeSide): number {
  const [, loss] = lossesOf(leg, side);
  return outward(loss, { combined: leg.flow, own: side.flow, sides: 0 });
}

/** Head [m] that the straight run loses, below 0 where it gains; `widest`: the bore of the widest side, the flow of all sides. */
export function headAtStraightRun(leg: TeeLeg, widest: TeeSide): number {
  const [loss] = lossesOf(leg, widest);
  return outward(loss, { combined: leg.flow, own: leg.flow - widest.flow, sides: widest.flow });
}

function lossesOf({ bore: legBore, frictionMultiplier }: TeeLeg, { bore }: TeeSide) {
  const sideBore = bore ?? legBore;
  if (sideBore === null) throw new Error('invariant: the leg of a tee or its side has a bore');
  return teeLosses({ legBore, sideBores: [sideBore], multiplier: frictionMultiplier });
}

const outward = (loss: TeeBranchLoss | null | undefined, flows: TeeFlows): number =>
  loss === null || loss === undefined ? 0 : teeHead(loss, flows, 'outward').head;
