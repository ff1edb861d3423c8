/** Decides which branches of a tree rest, and which way the others run. */
import { figureAt, wholeAt } from './branch-arrays.ts';
import { headToOpen } from './tee-branch-loss.ts';
import { branchAt, flowOfSides, type Tree, type TreeState } from './tree.ts';

/**
 * A branch through which water passes one way only runs outward or rests. A side branch of a tee runs either way: outward
 * it loses the combined velocity head, inward it does not, and while its driving head lies between 0 and that head it rests.
 */
export type Passage = 'outward' | 'resting' | 'inward';

/** Below this share of the combined flow the sign of a side's flow is rounding. */
const SIGN_SHARE = 1e-10;

interface Question {
  readonly state: TreeState;
  /** Heads [m] up to this decide nothing. */
  readonly noHead: number;
}

/** The passages that a state asks for where they differ from the present ones; null when all agree. */
export function nextPassages(
  tree: Tree,
  passages: readonly Passage[],
  question: Question & { readonly oneAtATime: boolean },
): readonly Passage[] | null {
  let next: Passage[] | null = null;
  for (const b of tree.restable) {
    const passage = passages[b] ?? 'outward';
    const wanted = wantedPassage(tree, passage, b, question);
    if (wanted === passage) continue;
    const changed: Passage[] = next ?? [...passages];
    if (wanted !== 'resting' || !isLastFree(tree, changed, b)) changed[b] = wanted;
    else if (!keepRunning(tree, changed, b)) continue;
    next = changed;
    if (question.oneAtATime) break;
  }
  return next;
}

/**
 * For a branch that ought to rest although it must carry its node's flow: a side that was taken to run inward runs outward then; a
 * one-way branch rests after all where a side at rest can run in its place. Whether `passages` changed.
 */
function keepRunning(tree: Tree, passages: Passage[], b: number): boolean {
  if (passages[b] === 'inward') {
    passages[b] = 'outward';
    return true;
  }
  const neighbour = wholeAt(tree.isOneWay, b) === 1 ? restingNeighbour(tree, passages, b) : null;
  if (neighbour === null) return false;
  passages[neighbour] = 'inward';
  passages[b] = 'resting';
  return true;
}

/** The passages with those one-way branches at rest that the state has running backwards; null where none does. */
export function closedAgainst(
  tree: Tree,
  passages: readonly Passage[],
  { flow }: TreeState,
): readonly Passage[] | null {
  let next: Passage[] | null = null;
  for (const b of tree.restable) {
    if (wholeAt(tree.isOneWay, b) === 0 || passages[b] === 'resting' || !(figureAt(flow, b) < 0)) continue;
    if (isLastFree(tree, next ?? passages, b)) continue;
    next ??= [...passages];
    next[b] = 'resting';
  }
  return next;
}

function wantedPassage(tree: Tree, passage: Passage, b: number, { state, noHead }: Question): Passage {
  const { flow, head } = state;
  const { teeLoss, parent } = branchAt(tree, b);
  const isOneWay = wholeAt(tree.isOneWay, b) === 1;
  const q = figureAt(flow, b);
  const combined = figureAt(flow, parent);
  if (passage !== 'resting' && isOneWay) return q < 0 ? 'resting' : 'outward';
  const sides = teeLoss?.part === 'run' ? flowOfSides(tree, parent, flow) : 0;
  const toOpen = headToOpen(teeLoss, { combined, own: 0, sides });
  const least = SIGN_SHARE * Math.max(0, combined);
  if (passage === 'outward') return q < -least && toOpen > noHead ? 'resting' : passage;
  if (passage === 'inward' && q > least) return toOpen > noHead ? 'resting' : 'outward';
  if (passage === 'inward') return passage;
  const driving = figureAt(head, parent) - figureAt(head, b);
  if (driving > toOpen + noHead) return 'outward';
  return !isOneWay && driving < -noHead ? 'inward' : passage;
}

const passesWater = (tree: Tree, passages: readonly Passage[], b: number): boolean =>
  !branchAt(tree, b).shut && passages[b] !== 'resting';

/** Whether all other branches of the node pass no water: then this one must carry the node's flow. */
function isLastFree(tree: Tree, passages: readonly Passage[], b: number): boolean {
  const siblings = branchAt(tree, branchAt(tree, b).parent).children;
  return siblings.every((s) => s === b || !passesWater(tree, passages, s));
}

/** A branch of the same node that rests although water may pass it either way. */
function restingNeighbour(tree: Tree, passages: readonly Passage[], b: number): number | null {
  const siblings = branchAt(tree, branchAt(tree, b).parent).children;
  return siblings.find((s) => passages[s] === 'resting' && wholeAt(tree.isOneWay, s) === 0) ?? null;
}

/** The state with newly resting branches brought to rest, their flow handed to a neighbour so that continuity holds. */
export function broughtToRest(tree: Tree, passages: readonly Passage[], state: TreeState): TreeState {
  const flow = Float64Array.from(state.flow);
  const isFree = (b: number) => passesWater(tree, passages, b);
  const shift = (from: number, amount: number) => {
    for (let b: number | undefined = from; b !== undefined; b = branchAt(tree, b).children.find(isFree)) {
      flow[b] = figureAt(flow, b) + amount;
    }
  };
  for (const [b, passage] of passages.entries()) {
    const q = figureAt(flow, b);
    if (passage !== 'resting' || q === 0) continue;
    const neighbour = branchAt(tree, branchAt(tree, b).parent).children.find((s) => s !== b && isFree(s));
    if (neighbour === undefined) throw new Error(`node above branch ${b} has no free branch`);
    shift(b, -q);
    shift(neighbour, q);
    flow[b] = 0;
  }
  return { flow: continuous(tree, passages, flow), head: state.head };
}

/** Flows that add up at every node: what rounding left over goes to a branch that runs; beyond one at rest that is all of it. */
function continuous(tree: Tree, passages: readonly Passage[], from: Float64Array): Float64Array {
  const flow = Float64Array.from(from);
  for (const [b, { children }] of tree.branches.entries()) {
    const heir = children.find((c) => passesWater(tree, passages, c));
    if (heir === undefined) continue;
    let left = figureAt(flow, b);
    for (const c of children) left -= figureAt(flow, c);
    flow[heir] = figureAt(flow, heir) + left;
  }
  return flow;
}
