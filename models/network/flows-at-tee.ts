/** Finds the flows that decide what a branch loses at the tee that it leaves. */
import { at } from '../../curves/at.ts';
import type { NetworkBranch } from './network.ts';
import { type TeeFlows, teeHead } from './tee-branch-loss.ts';

const NO_BRANCHES: readonly number[] = [];

/** The flows at the tee that a branch leaves, from the flow of every branch [m3/s]; only a straight run needs those of the sides. */
export function flowsAtTee(
  branches: readonly NetworkBranch[],
  flows: ArrayLike<number>,
  b: number,
): TeeFlows {
  const { parent = -1, teeLoss = null } = branches[b] ?? {};
  const siblings = teeLoss?.part === 'run' ? (branches[parent]?.children ?? NO_BRANCHES) : NO_BRANCHES;
  let sides = 0;
  for (const sibling of siblings) {
    if (sibling !== b) sides += Math.max(0, at(flows, sibling));
  }
  return { combined: parent < 0 ? 0 : at(flows, parent), own: at(flows, b), sides };
}

/** Head [m] that a branch loses at its tee by the flows of all branches [m3/s]; 0 without a tee, and for a side that rests. */
export function headAtTee(branches: readonly NetworkBranch[], flows: ArrayLike<number>, b: number): number {
  const teeLoss = branches[b]?.teeLoss ?? null;
  if (teeLoss === null) return 0;
  return teeHead(teeLoss, flowsAtTee(branches, flows, b), at(flows, b) > 0 ? 'outward' : 'inward').head;
}
