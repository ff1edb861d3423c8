/** Solves the linearised equations of a tree, by elimination from the outlets up and back down. */

import { figureAt, wholeAt } from './branch-arrays.ts';

/**
 * The equations of every branch but the root, linearised at the present flows and heads; arrays by branch index. A
 * held branch keeps its flow.
 */
export interface LinearTree {
  readonly parent: Int32Array;
  /** 1 for a branch that ends in an outlet, whose head stays, else 0. */
  readonly isOutlet: Uint8Array;
  /** 1 for a branch that keeps its flow, else 0. */
  readonly held: Uint8Array;
  /** Head where the branch begins - losses - head at its far end [m]. */
  readonly residual: Float64Array;
  /** Derivative of the branch's losses by its own flow [s/m2], above 0. */
  readonly lossSlope: Float64Array;
  /** Derivative of its losses by the combined flow of the tee it leaves [s/m2]. */
  readonly combinedSlope: Float64Array;
  /** Derivative of its losses by the flow of the sides of that tee [s/m2]; 0 but for a straight run. */
  readonly sidesSlope: Float64Array;
  /** 1 for a side whose flow counts there, else 0. */
  readonly isSide: Uint8Array;
  /** Indices [-] of the sides at the far end of each branch. */
  readonly sidesBeyond: readonly (readonly number[])[];
}

/** A step of all branches. */
export interface TreeStep {
  /** Changes of flow [m3/s]. */
  readonly flow: Float64Array;
  /** Changes of the head at each far end [m]; outlets keep theirs. */
  readonly head: Float64Array;
}

/** What a step is worked out in; the step itself lies in it until the next one. */
export interface StepBuffers extends TreeStep {
  /** Flow that a subtree takes without a change of head where it begins [m3/s]. */
  readonly fixed: Float64Array;
  /** Flow per head where it begins [m2/s]. */
  readonly gain: Float64Array;
  /** Flow lost per combined flow of the tee that it leaves [-]. */
  readonly pull: Float64Array;
  /** Sums over the children of each branch, of `fixed` [m3/s], `gain` [m2/s] and `pull` [-], then of `flow` [m3/s]. */
  readonly sumFixed: Float64Array;
  /** [m2/s] */
  readonly sumGain: Float64Array;
  /** [-] */
  readonly sumPull: Float64Array;
  /** [m3/s] */
  readonly sumFlow: Float64Array;
  /** The branch beyond that responds to a head most: rounding is left to it; -1 where none does. */
  readonly widest: Int32Array;
}

/** Buffers for a tree of `size` branches [-]. */
export const stepBuffers = (size: number): StepBuffers => ({
  flow: new Float64Array(size),
  head: new Float64Array(size),
  fixed: new Float64Array(size),
  gain: new Float64Array(size),
  pull: new Float64Array(size),
  sumFixed: new Float64Array(size),
  sumGain: new Float64Array(size),
  sumPull: new Float64Array(size),
  sumFlow: new Float64Array(size),
  widest: new Int32Array(size),
});

/**
 * The step that zeroes the linearised equations while the root's flow changes by `rootStep` [m3/s].
 *
 * The flow into each subtree is linear in the head where it begins: dq = fixed + gain dh - pull dQ, with dh the head
 * at the node and dQ the flow into it; of the straight run of a tee, the first branch of its node, also by way of the
 * sides. Continuity is kept exactly. O(branches). A branch that is not held needs one beyond it that is not held.
 * @returns `buffers`, whose flows [m3/s] and heads [m] are the step until the next one.
 */
export function treeStep(tree: LinearTree, rootStep: number, buffers: StepBuffers): TreeStep {
  const size = tree.parent.length;
  const { fixed, gain, pull, sumFixed, sumGain, sumPull, widest, flow, head } = buffers;
  sumFixed.fill(0);
  sumGain.fill(0);
  sumPull.fill(0);
  widest.fill(-1);
  for (let b = size - 1; b > 0; b--) {
    if (wholeAt(tree.held, b) === 1) continue;
    let stiffness = figureAt(tree.lossSlope, b);
    let offset = figureAt(tree.residual, b);
    if (wholeAt(tree.isOutlet, b) === 0) {
      stiffness += (1 + figureAt(sumPull, b)) / figureAt(sumGain, b);
      offset += figureAt(sumFixed, b) / figureAt(sumGain, b);
    }
    fixed[b] = offset / stiffness;
    gain[b] = 1 / stiffness;
    pull[b] = figureAt(tree.combinedSlope, b) / stiffness;
    const p = wholeAt(tree.parent, b);
    if (figureAt(tree.sidesSlope, b) !== 0) respondToSides(tree, buffers, { run: b, stiffness });
    if (wholeAt(widest, p) < 0 || figureAt(gain, b) > figureAt(gain, wholeAt(widest, p))) widest[p] = b;
    sumFixed[p] = figureAt(sumFixed, p) + figureAt(fixed, b);
    sumGain[p] = figureAt(sumGain, p) + figureAt(gain, b);
    sumPull[p] = figureAt(sumPull, p) + figureAt(pull, b);
  }
  for (let b = 0; b < size; b++) {
    if (b === 0) flow[b] = rootStep;
    else if (wholeAt(tree.held, b) === 1) flow[b] = 0;
    else {
      const p = wholeAt(tree.parent, b);
      flow[b] =
        figureAt(fixed, b) + figureAt(gain, b) * figureAt(head, p) - figureAt(pull, b) * figureAt(flow, p);
    }
    // A node with no way on but shut ones keeps its head.
    const movesHead = wholeAt(tree.isOutlet, b) === 0 && figureAt(sumGain, b) !== 0;
    head[b] = movesHead
      ? (figureAt(flow, b) * (1 + figureAt(sumPull, b)) - figureAt(sumFixed, b)) / figureAt(sumGain, b)
      : 0;
  }
  keepContinuity(tree, buffers);
  return buffers;
}

/** Adds to the response of a straight run that to its sides, whose responses are known: they follow it in their node. */
function respondToSides(
  { sidesBeyond, isSide, parent, sidesSlope }: LinearTree,
  { fixed, gain, pull }: StepBuffers,
  { run, stiffness }: { readonly run: number; readonly stiffness: number },
): void {
  const share = figureAt(sidesSlope, run) / stiffness;
  for (const side of sidesBeyond[wholeAt(parent, run)] ?? []) {
    if (wholeAt(isSide, side) === 0) continue;
    fixed[run] = figureAt(fixed, run) - share * figureAt(fixed, side);
    gain[run] = figureAt(gain, run) - share * figureAt(gain, side);
    pull[run] = figureAt(pull, run) - share * figureAt(pull, side);
  }
}

/** Makes flows [m3/s] that rounding left off add up again, from the root down: the branch that responds most takes the rest. */
export function keepContinuity(
  { parent }: Pick<LinearTree, 'parent'>,
  { flow, widest, sumFlow }: Pick<StepBuffers, 'flow' | 'widest' | 'sumFlow'>,
): void {
  sumFlow.fill(0);
  for (let b = flow.length - 1; b > 0; b--) {
    const p = wholeAt(parent, b);
    sumFlow[p] = figureAt(sumFlow, p) + figureAt(flow, b);
  }
  for (let b = 0; b < flow.length; b++) {
    const heir = wholeAt(widest, b);
    if (heir >= 0) flow[heir] = figureAt(flow, heir) + (figureAt(flow, b) - figureAt(sumFlow, b));
  }
}
