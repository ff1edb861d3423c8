/** Cleans the figures of a solved tree where water rests in it. */
import { figureAt, wholeAt } from './branch-arrays.ts';
import { lossAt, type Tree, type TreeState } from './tree.ts';

/** A flow through a one-way branch below this share of the largest is rounding. */
const ROUNDING_SHARE = 1e-14;

/**
 * The state without rounding where water rests: one-way branches run outward or rest, exactly; levels that differ by
 * rounding move no water beyond a branch at rest; heads are those of water at rest. Losses up to `noHead` [m] are rounding.
 */
export function withRest(
  tree: Tree,
  state: TreeState,
  { isAnyClosed, noHead }: { readonly isAnyClosed: boolean; readonly noHead: number },
): TreeState {
  const forward = tree.hasOneWay ? withoutBackflow(tree, state.flow) : state.flow;
  const flow = isAnyClosed || figureAt(forward, 0) === 0 ? withoutRounding(tree, forward, noHead) : forward;
  return { flow, head: tree.hasOneWay ? headsAtRest(tree, { flow, head: state.head }) : state.head };
}

function withoutBackflow({ isOneWay }: Tree, flow: Float64Array): Float64Array {
  let largest = 0;
  for (const q of flow) largest = Math.max(largest, Math.abs(q));
  const least = ROUNDING_SHARE * largest;
  return flow.map((q, b) => (q < least && wholeAt(isOneWay, b) === 1 ? 0 : q));
}

/** Flows with those brought to 0 that run beyond a branch at rest although no loss [m] there exceeds `noHead`. */
function withoutRounding(tree: Tree, flow: Float64Array, noHead: number): Float64Array {
  const { branches, parent } = tree;
  const greatest = new Float64Array(branches.length);
  for (let b = branches.length - 1; b > 0; b--) {
    const loss = Math.abs(lossAt(tree, b, figureAt(flow, b)).head);
    const p = wholeAt(parent, b);
    greatest[p] = Math.max(figureAt(greatest, p), figureAt(greatest, b), loss);
  }
  const rests = new Uint8Array(branches.length);
  const quiet = Float64Array.from(flow);
  for (let b = 0; b < branches.length; b++) {
    const isBeyond = b > 0 && wholeAt(rests, wholeAt(parent, b)) === 1;
    if (isBeyond) quiet[b] = 0;
    if (isBeyond || (figureAt(quiet, b) === 0 && figureAt(greatest, b) <= noHead)) rests[b] = 1;
  }
  return quiet;
}

/**
 * Heads at the far ends [m] of water at rest. A solver gives a branch at rest the least head at which water would begin to
 * run beyond it; where no check valve holds water up, it rises no higher than at the node that the branch leaves.
 */
function headsAtRest({ branches, isOneWay }: Tree, { flow, head }: TreeState): Float64Array {
  const heads = Float64Array.from(head);
  for (const [b, { parent, shut, hasCheckValve }] of branches.entries()) {
    if (parent < 0 || shut || hasCheckValve || wholeAt(isOneWay, b) === 0) continue;
    if (figureAt(flow, b) <= 0) heads[b] = Math.min(figureAt(heads, b), figureAt(heads, parent));
  }
  return heads;
}
