/** Decides which way the side branches of tees run: outward, inward, or resting between the two. */
import { figureAt } from './branch-arrays.ts';
import { combinedHead } from './tee-branch-loss.ts';
import { branchAt, type Tree, type TreeState } from './tree.ts';

/**
 * While the combined flow runs outward, a side branch that runs outward pays the combined velocity head and one that
 * runs inward does not; a branch whose driving head lies between 0 and that velocity head rests.
 */
export type SideDirection = 'outward' | 'resting' | 'inward';

/** Below this share of the combined flow a sign is rounding. */
const SIGN_SHARE = 1e-10;

/**
 * The directions that a state asks for where they differ from the present ones; null where all agree.
 *
 * @param state flows [m3/s] and heads [m] of all branches.
 * @param rules oneAtATime, to change a single branch; noHead [m], a velocity head up to which decides nothing.
 */
export function nextDirections(
  tree: Tree,
  directions: readonly SideDirection[],
  state: TreeState,
  { oneAtATime, noHead }: { readonly oneAtATime: boolean; readonly noHead: number },
): readonly SideDirection[] | null {
  let next: SideDirection[] | null = null;
  for (const b of tree.sideBranches) {
    const direction = directions[b] ?? 'outward';
    const wanted = wantedDirection(tree, direction, b, { state, noHead });
    if (wanted === direction || (wanted === 'resting' && isLastFree(tree, next ?? directions, b))) continue;
    next ??= [...directions];
    next[b] = wanted;
    if (oneAtATime) break;
  }
  return next;
}

function wantedDirection(
  tree: Tree,
  direction: SideDirection,
  b: number,
  { state: { flow, head }, noHead }: { readonly state: TreeState; readonly noHead: number },
): SideDirection {
  const branch = branchAt(tree, b);
  if (branch.teeLoss === null) return direction;
  const combined = figureAt(flow, branch.parent);
  const velocityHead = combinedHead(branch.teeLoss, combined);
  const q = figureAt(flow, b);
  const least = SIGN_SHARE * Math.max(0, combined);
  if (direction === 'outward') return q < -least && velocityHead > noHead ? 'resting' : direction;
  if (direction === 'inward') return q > least && velocityHead > noHead ? 'resting' : direction;
  const driving = figureAt(head, branch.parent) - figureAt(head, b);
  if (driving > velocityHead + noHead) return 'outward';
  return driving < -noHead ? 'inward' : direction;
}

/** Whether all other branches of the node pass no water: then this one must carry the node's flow. */
function isLastFree(tree: Tree, directions: readonly SideDirection[], b: number): boolean {
  const siblings = branchAt(tree, branchAt(tree, b).parent).children;
  return siblings.every((s) => s === b || branchAt(tree, s).shut || directions[s] === 'resting');
}

/** The state with newly resting branches brought to rest, their flow handed to a neighbour so that continuity holds. */
export function broughtToRest(tree: Tree, directions: readonly SideDirection[], state: TreeState): TreeState {
  const flow = Float64Array.from(state.flow);
  const isFree = (b: number) => !branchAt(tree, b).shut && directions[b] !== 'resting';
  const shift = (from: number, amount: number) => {
    for (let b: number | undefined = from; b !== undefined; b = branchAt(tree, b).children.find(isFree)) {
      flow[b] = figureAt(flow, b) + amount;
    }
  };
  for (const [b, direction] of directions.entries()) {
    const q = figureAt(flow, b);
    if (direction !== 'resting' || q === 0) continue;
    const neighbour = branchAt(tree, branchAt(tree, b).parent).children.find((s) => s !== b && isFree(s));
    if (neighbour === undefined) throw new Error(`node above branch ${b} has no free branch`);
    shift(b, -q);
    shift(neighbour, q);
    flow[b] = 0;
  }
  return { flow, head: state.head };
}
