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
  /** Indices [-] of the open branches that can rest between others that run: sides of tees, and one-way branches. */
  readonly restable: readonly number[];
  /** 1 for a branch that water passes one way only: by a check valve, by a free outlet, or since all beyond it does. */
  readonly isOneWay: Uint8Array;
  /** Whether any branch but the root is one-way. */
  readonly hasOneWay: boolean;
  /** Indices [-] of the side branches of the tee at the far end of each branch whose straight run loses by what they take; else empty. */
  readonly sidesBeyond: readonly (readonly number[])[];
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
  const isOneWay = oneWay(branches);
  return {
    branches,
    parent: Int32Array.from(branches, (branch) => branch.parent),
    isOutlet: Uint8Array.from(branches, (branch) => (branch.outlet === null ? 0 : 1)),
    losses: branches.map(({ elements }) => inSeries(elements.map(({ resistance }) => resistance.terms))),
    restable: branches.flatMap(({ teeLoss, parent, shut }, b) =>
      parent >= 0 && !shut && (teeLoss?.part === 'side' || isOneWay[b] === 1) ? [b] : [],
    ),
    isOneWay,
    hasOneWay: isOneWay.some((one, b) => b > 0 && one === 1),
    sidesBeyond: branches.map(({ children }) => sidesOf(branches, children)),
    liftRange: liftRange(branches),
  };
}

/** Whether water passes a branch one way only, of branches that are open. */
function oneWay(branches: readonly NetworkBranch[]): Uint8Array {
  const isOneWay = new Uint8Array(branches.length);
  for (let b = branches.length - 1; b >= 0; b--) {
    const branch = branches[b];
    if (branch === undefined || branch.shut) continue;
    const { outlet, children, hasCheckValve } = branch;
    const open = children.filter((c) => branches[c]?.shut === false);
    const beyond = outlet === null ? open.every((c) => isOneWay[c] === 1) : outlet.exit === 'free';
    if (hasCheckValve || beyond) isOneWay[b] = 1;
  }
  return isOneWay;
}

const NO_SIDES: readonly number[] = [];

function sidesOf(branches: readonly NetworkBranch[], children: readonly number[]): readonly number[] {
  const [first] = children;
  const run = first === undefined ? undefined : branches[first];
  return run?.teeLoss?.part === 'run' && !run.shut
    ? children.slice(1).filter((c) => branches[c]?.shut === false)
    : NO_SIDES;
}

/** Flow [m3/s] of all sides of the tee beyond a branch that run outward, where its straight run loses by it; else 0. */
export function flowOfSides({ sidesBeyond }: Tree, b: number, flow: Float64Array): number {
  let outward = 0;
  for (const side of sidesBeyond[b] ?? NO_SIDES) outward += Math.max(0, figureAt(flow, side));
  return outward;
}

/** The most that flows leave over at a node [m3/s]. */
export function continuityGap({ branches }: Tree, flow: Float64Array): number {
  let most = 0;
  for (const [b, { children }] of branches.entries()) {
    if (children.length === 0) continue;
    let left = figureAt(flow, b);
    for (const c of children) left -= figureAt(flow, c);
    most = Math.max(most, Math.abs(left));
  }
  return most;
}

/** Head that a branch loses at a flow [m], its tee aside, and the slope of that [s/m2]. */
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

/** Whether a branch, by its index [-], is taken to rest. */
type Rests = (b: number) => boolean;

/**
 * A state to start from: flows [m3/s] and heads [m].
 *
 * Where all outlets are at one level: the flows of `earlier` scaled to the total flow, else a split by turbulent
 * conductances. Where not: the flows of `earlier` carried along their slopes, else those of a network of linear
 * losses that the difference of levels drives as well.
 * @param totalFlow [m3/s] of 0 or more.
 * @param from earlier, a solution of the network; rests, branches without flow in a network of linear losses.
 */
export function initialState(
  tree: Tree,
  totalFlow: number,
  {
    earlier,
    rests = () => false,
  }: { readonly earlier?: EarlierFlows | undefined; readonly rests?: Rests } = {},
): TreeState {
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
  return range > 0 ? drivenByLevels(tree, flow, { range, rests }) : { flow, head: balancedHeads(tree, flow) };
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
function drivenByLevels(
  tree: Tree,
  split: Float64Array,
  { range, rests }: { readonly range: number; readonly rests: Rests },
): TreeState {
  const size = tree.branches.length;
  const lossSlope = new Float64Array(size);
  const residual = new Float64Array(size);
  const held = new Uint8Array(size);
  for (const [b, branch] of tree.branches.entries()) {
    if (branch.shut || rests(b)) held[b] = 1;
    const trial = Math.max(Math.abs(figureAt(split, b)), TRIAL_FLOW);
    const perSquare = lossAt(tree, b, trial).head / trial ** 2;
    lossSlope[b] = Math.max(perSquare * trial, Math.sqrt(perSquare * range), LEAST_SLOPE);
    if (wholeAt(tree.isOutlet, b) === 1) residual[b] = -branch.lift;
  }
  const { parent, isOutlet } = tree;
  const combinedSlope = new Float64Array(size);
  const sidesSlope = new Float64Array(size);
  const isSide = new Uint8Array(size);
  const { sidesBeyond } = tree;
  const linear = {
    parent,
    isOutlet,
    held,
    residual,
    lossSlope,
    combinedSlope,
    sidesSlope,
    isSide,
    sidesBeyond,
  };
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
