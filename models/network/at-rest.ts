/** The figures of a solved tree where water rests in it. */
import { figureAt, wholeAt } from './branch-arrays.ts';
import { lossAt, type Tree, type TreeState } from './tree.ts';

/** A flow through a one-way branch below this share of the largest is rounding. */
const ROUNDING_SHARE = 1e-14;

/**
 * The state as it is told: one-way branches run outward or rest, exactly; levels that are one but for rounding move no water beyond a
 * branch at rest; and heads are those at which water stands. Losses up to `noHead` [m] are rounding.
 */
export function withRest(
  tree: Tree,
  state: TreeState,
  { isAnyClosed, noHead }: { readonly isAnyClosed: boolean; readonly noHead: number },
): TreeState {
  const forward = tree.hasOneWay ? withoutBackflow(tree, state.flow) : state.flow;
  const flow = isAnyClosed || figureAt(forward, 0) === 0 ? stilled(tree, forward, noHead) : forward;
  return { flow, head: tree.hasOneWay ? standingHeads(tree, { flow, head: state.head }) : state.head };
}

function withoutBackflow({ isOneWay }: Tree, flow: Float64Array): Float64Array {
  let largest = 0;
  for (const q of flow) largest = Math.max(largest, Math.abs(q));
  const least = ROUNDING_SHARE * largest;
  return flow.map((q, b) => (q < least && wholeAt(isOneWay, b) === 1 ? 0 : q));
}

/** Flows with those brought to 0 that run beyond a branch at rest although no loss [m] there exceeds `noHead`. */
function stilled(tree: Tree, flow: Float64Array, noHead: number): Float64Array {
  const { branches, parent } = tree;
  const loudest = new Float64Array(branches.length);
  for (let b = branches.length - 1; b > 0; b--) {
    const loss = Math.abs(lossAt(tree, b, figureAt(flow, b)).head);
    const p = wholeAt(parent, b);
    loudest[p] = Math.max(figureAt(loudest, p), figureAt(loudest, b), loss);
  }
  const isStill = new Uint8Array(branches.length);
  const still = Float64Array.from(flow);
  for (let b = 0; b < branches.length; b++) {
    const isBeyond = b > 0 && wholeAt(isStill, wholeAt(parent, b)) === 1;
    if (isBeyond) still[b] = 0;
    if (isBeyond || (figureAt(still, b) === 0 && figureAt(loudest, b) <= noHead)) isStill[b] = 1;
  }
  return still;
}

/**
 * Heads at the far ends [m] as water stands there. A solver gives a branch at rest the least head at which water would begin
 * to run beyond it; where no check valve holds water up, it stands no higher than at the node that the branch leaves.
 */
function standingHeads({ branches, isOneWay }: Tree, { flow, head }: TreeState): Float64Array {
  const standing = Float64Array.from(head);
  for (const [b, { parent, shut, hasCheckValve }] of branches.entries()) {
    if (parent < 0 || shut || hasCheckValve || wholeAt(isOneWay, b) === 0) continue;
    if (figureAt(flow, b) <= 0) standing[b] = Math.min(figureAt(standing, b), figureAt(standing, parent));
  }
  return standing;
}
