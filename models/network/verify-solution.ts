/** Checks from the answer alone that a solved network satisfies continuity and heads. */
import { at } from '../../curves/at.ts';
import { flowsAtTee, headAtTee } from './flows-at-tee.ts';
import { lossOver, type Network } from './network.ts';
import type { NetworkSolution } from './solve-network.ts';
import { buffersOf } from './solver-buffers.ts';
import { headToOpen, type TeeBranchLoss } from './tee-branch-loss.ts';

/** What a solution may be off by, as a share of the largest flow and of the greatest way of losses and lift to an outlet. */
export const ALLOWED_RESIDUAL = 1e-9;

/** Shares are taken of no less than this flow [m3/s] and this head [m]. */
const LEAST_FLOW = 1e-7;
const LEAST_HEAD = 1e-7;
/** A side branch of a tee, open both ways, with a flow below this share of the largest counts as resting. */
const RESTING_SHARE = 1e-9;

/**
 * The largest relative residual [-] of a solution: of continuity at each node, of flow backwards through a branch that
 * lets none through, and of the head from the start of the discharge down to each outlet, walked afresh from the flows.
 *
 * Heads beyond a closed branch are not those of the node it leaves, so that the walk starts again there from the head
 * solved for; beyond a branch that rests likewise, and that one must be driven by no more than what holds it: at a tee
 * what it would lose there with next to no flow, else nothing. A side that could run back as well must be driven by no
 * less than nothing.
 * @returns the larger of flow missing/largest flow and head missing/longest way of losses and lift.
 */
export function largestResidual(network: Network, { flows, heads, rootHead }: NetworkSolution): number {
  const { branches } = network;
  const { isOneWay } = buffersOf(network).tree;
  let largestFlow = LEAST_FLOW;
  for (const flow of flows) largestFlow = Math.max(largestFlow, Math.abs(flow));
  const head: number[] = [];
  const wayLoss: number[] = [];
  let longestWay = LEAST_HEAD;
  let worstHead = 0;
  let worstFlow = 0;
  for (const [b, branch] of branches.entries()) {
    const { teeLoss, parent, outlet, shut, lift } = branch;
    const own = at(flows, b);
    const closes = isOneWay[b] === 1;
    const isResting =
      parent >= 0 &&
      !shut &&
      (closes ? own === 0 : isSide(teeLoss) && Math.abs(own) <= RESTING_SHARE * largestFlow);
    const from = b === 0 ? rootHead : (head[parent] ?? Number.NaN);
    const atTee = teeLoss === null || shut ? 0 : headAtTee(branches, flows, b);
    const loss = lossOver(branch.elements, own).head;
    const way = (wayLoss[parent] ?? 0) + Math.abs(loss) + Math.abs(atTee);
    const end = shut || isResting ? at(heads, b) : from - loss - atTee;
    wayLoss.push(way);
    head.push(end);
    if (isResting) {
      const driving = from - (closes && outlet !== null ? lift : end);
      worstHead = Math.max(worstHead, driving - headToOpen(teeLoss, flowsAtTee(branches, flows, b)));
      if (!closes) worstHead = Math.max(worstHead, -driving);
    }
    if (closes && !shut) worstFlow = Math.max(worstFlow, -own);
    if (outlet !== null && !shut) {
      if (!(isResting && closes)) worstHead = Math.max(worstHead, Math.abs(end - lift));
      longestWay = Math.max(longestWay, way + Math.abs(lift));
    }
    if (outlet === null) {
      let beyond = 0;
      for (const child of branch.children) beyond += at(flows, child);
      worstFlow = Math.max(worstFlow, Math.abs(beyond - own));
    }
  }
  return Math.max(worstFlow / largestFlow, worstHead / longestWay);
}

const isSide = (teeLoss: TeeBranchLoss | null): boolean => teeLoss?.part === 'side';
