/** Holds a network's shape in arrays, and finds a state of it for its solver to start from. */

import { at } from '../../curves/at.ts';
import { type HeadLoss, inSeries, type LossTerms, lossOf } from '../components/loss-terms.ts';
import { figureAt, wholeAt } from './branch-arrays.ts';
import { stepBuffers, treeStep } from './linear-tree.ts';
import type { Network, NetworkBranch } from './network.ts';

/** A flow [m3/s] to judge a loss by where no better is known. */
const TRIAL_FLOW = 1e-5;
/** Slope of a branch without any loss [s/m2]. */
const LEAST_SLOPE = 1e-3;
/** Lifts that differ by less than this [m], or share of them, are one. */
const SAME_LEVEL = 1e-13;

/** A network's shape in arrays by branch index. */
export interface Tree {
  readonly branches: readonly NetworkBranch[];
  readonly parent: Int32Array;
  readonly isOutlet: Uint8Array;
  /** All elements of each branch in one. */
  readonly losses: readonly LossTerms[];
  /** Indices [-] of the open branches that leave a tee sideways. */
  readonly sideBranches: readonly number[];
  /** Highest less lowest outlet that water can reach [m]; 0 where that is rounding. */
  readonly liftRange: number;
}

/** A state of a tree; flows obey continuity at every node. */
export interface TreeState {
  /** Of each branch [m3/s]. */
  readonly flow: Float64Array;
  /** At the far end of each branch [m]. */
  readonly head: Float64Array;
}

/** The shape of a network in arrays. */
export function treeOf({ branches }: Network): Tree {
  return {
    branches,
    parent: Int32Array.from(branches, (branch) => branch.parent),
    isOutlet: Uint8Array.from(branches, (branch) => (branch.outlet === null ? 0 : 1)),
    losses: branches.map(({ elements }) => inSeries(elements.map(({ resistance }) => resistance.terms))),
    sideBranches: branches.flatMap(({ teeLoss, shut }, index) => (teeLoss === null || shut ? [] : [index])),
    liftRange: liftRange(branches),
  };
}

/** Head that a branch loses at a flow [m], its loss at a tee aside, and the slope of that [s/m2]. */
export function lossAt({ losses }: Tree, index: number, flow: number): HeadLoss {
  const terms = losses[index];
  if (terms === undefined) throw new Error(`branch ${index} is not in the network`);
  return lossOf(terms, flow);
}

/** A branch by its index [-]; throws where there is none, which is a bug. */
export function branchAt({ branches }: Tree, index: number): NetworkBranch {
  const branch = branches[index];
  if (branch === undefined) throw new Error(`branch ${index} is not in the network`);
  return branch;
}

/** An earlier solution of the same network. */
export interface EarlierFlows {
  /** Of each branch [m3/s]. */
  readonly flows: readonly number[];
  /** d(branch flow)/d(total flow) [-]. */
  readonly flowSlopes: readonly number[];
}

/**
 * A state to start from: flows [m3/s] and heads [m].
 *
 * Where all outlets are at one level: the flows of `earlier` scaled to the total flow, else a split by turbulent
 * conductances. Where not: the flows of `earlier` carried along their slopes, else those of a network of linear
 * losses that the difference of levels drives as well.
 * @param totalFlow [m3/s] of 0 or more.
 */
export function initialState(tree: Tree, totalFlow: number, earlier?: EarlierFlows): TreeState {
  const range = tree.liftRange;
  const earlierFlow = earlier === undefined ? 0 : at(earlier.flows, 0);
  if (earlier !== undefined && range > 0) {
    const change = totalFlow - earlierFlow;
    const flow = new Float64Array(earlier.flows.length);
    for (let b = 0; b < flow.length; b++) flow[b] = at(earlier.flows, b) + at(earlier.flowSlopes, b) * change;
    return { flow, head: balancedHeads(tree, flow) };
  }
  if (earlier !== undefined && earlierFlow > 0) {
    const flow = new Float64Array(earlier.flows.length);
    for (let b = 0; b < flow.length; b++) flow[b] = at(earlier.flows, b) * (totalFlow / earlierFlow);
    return { flow, head: balancedHeads(tree, flow) };
  }
  const flow = splitByConductance(tree, totalFlow);
  return range > 0 ? drivenByLevels(tree, flow, range) : { flow, head: balancedHeads(tree, flow) };
}

function liftRange(branches: readonly NetworkBranch[]): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const { outlet, shut, lift } of branches) {
    if (outlet === null || shut) continue;
    least = Math.min(least, lift);
    most = Math.max(most, lift);
  }
  const isRounding = most - least <= SAME_LEVEL * (1 + Math.max(Math.abs(most), Math.abs(least)));
  return isRounding ? 0 : most - least;
}

/** Flows and heads where each loss runs straight from 0 through that at its split flow, or at a flow that `range` [m] drives. */
function drivenByLevels(tree: Tree, split: Float64Array, range: number): TreeState {
  const size = tree.branches.length;
  const lossSlope = new Float64Array(size);
  const residual = new Float64Array(size);
  const held = new Uint8Array(size);
  for (const [b, branch] of tree.branches.entries()) {
    if (branch.shut) held[b] = 1;
    const trial = Math.max(Math.abs(figureAt(split, b)), TRIAL_FLOW);
    const perSquare = lossAt(tree, b, trial).head / trial ** 2;
    lossSlope[b] = Math.max(perSquare * trial, Math.sqrt(perSquare * range), LEAST_SLOPE);
    if (wholeAt(tree.isOutlet, b) === 1) residual[b] = -branch.lift;
  }
  const { parent, isOutlet } = tree;
  const combinedSlope = new Float64Array(size);
  const linear = { parent, isOutlet, held, residual, lossSlope, combinedSlope };
  const step = treeStep(linear, figureAt(split, 0), stepBuffers(size));
  const head = step.head.map((one, b) => (wholeAt(isOutlet, b) === 1 ? branchAt(tree, b).lift : one));
  return { flow: step.flow, head };
}

/** Heads at the far ends that the open branches beyond would ask for on average. */
function balancedHeads(tree: Tree, flow: Float64Array): Float64Array {
  const head = new Float64Array(flow.length);
  for (let b = flow.length - 1; b >= 0; b--) {
    const { children, lift } = branchAt(tree, b);
    let wanted = 0;
    let open = 0;
    for (const c of children) {
      if (branchAt(tree, c).shut) continue;
      wanted += figureAt(head, c) + lossAt(tree, c, figureAt(flow, c)).head;
      open += 1;
    }
    head[b] = open === 0 ? lift : wanted / open;
  }
  return head;
}

/** Each node's flow split as if every loss were quadratic and every outlet at one level: exact for such networks. */
function splitByConductance(tree: Tree, totalFlow: number): Float64Array {
  const size = tree.branches.length;
  const trial = Math.max(totalFlow / Math.max(1, size), 1e-7);
  // Conductance G of a branch and all beyond it: flow = G sqrt(head).
  const conductance = new Float64Array(size);
  const beyond = new Float64Array(size);
  for (let b = size - 1; b >= 0; b--) {
    const branch = branchAt(tree, b);
    if (branch.shut) continue;
    const own = lossAt(tree, b, trial).head / trial ** 2;
    const further = wholeAt(tree.isOutlet, b) === 1 ? 0 : 1 / figureAt(beyond, b) ** 2;
    const resistance = own + further;
    // A branch without any loss would take everything: let it take a thousand times a share instead.
    conductance[b] = resistance > 0 ? 1 / Math.sqrt(resistance) : 1e3;
    if (b > 0) beyond[branch.parent] = figureAt(beyond, branch.parent) + figureAt(conductance, b);
  }
  const flow = new Float64Array(size);
  flow[0] = totalFlow;
  for (let b = 1; b < size; b++) {
    const { parent } = branchAt(tree, b);
    const all = figureAt(beyond, parent);
    flow[b] = all > 0 ? (figureAt(flow, parent) * figureAt(conductance, b)) / all : 0;
  }
  return flow;
}
