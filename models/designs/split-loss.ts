/** The heads that the branches of a split lose there at known flows. */
import { teeBranchLoss, teeHead } from '../network/tee-branch-loss.ts';

/** The leg that enters a tee: bore [m], null where no pipe leads to it; flow [m3/s]. */
export interface TeeLeg {
  readonly bore: number | null;
  readonly flow: number;
  readonly frictionMultiplier: number;
}

/** Head [m] that a side of a tee loses; `bore` [m] of its own first pipe, null where it has none and counts as wide as the leg. */
export function headAtSide(
  { bore: legBore, flow: combined, frictionMultiplier }: TeeLeg,
  { bore, flow }: { readonly bore: number | null; readonly flow: number },
): number {
  const sideBore = bore ?? legBore;
  if (sideBore === null) throw new Error('invariant: the leg of a tee or its side has a bore');
  const loss = teeBranchLoss({ legBore: legBore ?? sideBore, sideBore, multiplier: frictionMultiplier });
  return teeHead(loss, { combinedFlow: combined, sideFlow: flow });
}

/** Head [m] that the straight run of a tee loses, below 0 where it gains; `bore` [m] of the widest side, `flow` [m3/s] of all sides. */
export function headAtStraightRun(
  _leg: TeeLeg,
  _sides: { readonly bore: number | null; readonly flow: number },
): number {
  return 0;
}
