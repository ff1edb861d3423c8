/** Which way the side branches of tees run: outward, inward, or resting between the two. */
import { figureAt } from './branch-arrays.ts';
import { branchAt, type Tree, type TreeState } from './tree.ts';

/**
 * While the combined flow runs outward, a side branch that runs outward pays the combined velocity head and one that
 * runs inward does not; a branch whose driving head lies between 0 and that velocity head rests.
 */
export type Mouth = 'outward' | 'resting' | 'inward';

/** Below this share of the combined flow a sign is rounding. */
const SIGN_SHARE = 1e-10;

/**
 * The mouths that the state asks for where they differ from the present ones; null when all agree. Velocity heads up to
 * `noHead` [m] decide nothing.
 */
export function nextMouths(
  tree: Tree,
  mouths: readonly Mouth[],
  state: TreeState,
  { oneAtATime, noHead }: { readonly oneAtATime: boolean; readonly noHead: number },
): readonly Mouth[] | null {
  let next: Mouth[] | null = null;
  for (const b of tree.mouths) {
    const mouth = mouths[b] ?? 'outward';
    const wanted = wantedMouth(tree, mouth, b, { state, noHead });
    if (wanted === mouth || (wanted === 'resting' && isLastFree(tree, next ?? mouths, b))) continue;
    next ??= [...mouths];
    next[b] = wanted;
    if (oneAtATime) break;
  }
  return next;
}

function wantedMouth(
  tree: Tree,
  mouth: Mouth,
  b: number,
  { state: { flow, head }, noHead }: { readonly state: TreeState; readonly noHead: number },
): Mouth {
  const branch = branchAt(tree, b);
  if (branch.mouth === null) return mouth;
  const combined = Math.max(0, figureAt(flow, branch.parent));
  const velocityHead = branch.mouth.combined * combined ** 2;
  const q = figureAt(flow, b);
  const least = SIGN_SHARE * combined;
  if (mouth === 'outward') return q < -least && velocityHead > noHead ? 'resting' : mouth;
  if (mouth === 'inward') return q > least && velocityHead > noHead ? 'resting' : mouth;
  const driving = figureAt(head, branch.parent) - figureAt(head, b);
  if (driving > velocityHead + noHead) return 'outward';
  return driving < -noHead ? 'inward' : mouth;
}

/** Whether all other branches of the node pass no water: then this one must carry the node's flow. */
function isLastFree(tree: Tree, mouths: readonly Mouth[], b: number): boolean {
  const siblings = branchAt(tree, branchAt(tree, b).parent).children;
  return siblings.every((s) => s === b || branchAt(tree, s).shut || mouths[s] === 'resting');
}

/** The state with newly resting branches brought to rest, their flow handed to a neighbour so that continuity holds. */
export function restAtMouths(tree: Tree, mouths: readonly Mouth[], state: TreeState): TreeState {
  const flow = Float64Array.from(state.flow);
  const isFree = (b: number) => !branchAt(tree, b).shut && mouths[b] !== 'resting';
  const shift = (from: number, amount: number) => {
    for (let b: number | undefined = from; b !== undefined; b = branchAt(tree, b).children.find(isFree)) {
      flow[b] = figureAt(flow, b) + amount;
    }
  };
  for (const [b, mouth] of mouths.entries()) {
    const q = figureAt(flow, b);
    if (mouth !== 'resting' || q === 0) continue;
    const neighbour = branchAt(tree, branchAt(tree, b).parent).children.find((s) => s !== b && isFree(s));
    if (neighbour === undefined) throw new Error(`node above branch ${b} has no free branch`);
    shift(b, -q);
    shift(neighbour, q);
    flow[b] = 0;
  }
  return { flow, head: state.head };
}
