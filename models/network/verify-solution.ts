/** Checks from the answer alone that a solved network satisfies continuity and heads. */
import { at } from '../../curves/at.ts';
import { lossOver, type Network } from './network.ts';
import type { NetworkSolution } from './solve-network.ts';
import { combinedHead, sideHead } from './tee-branch-loss.ts';

/** What a solution may be off by, as a share of the largest flow and of the greatest way of losses and lift to an outlet. */
export const ALLOWED_RESIDUAL = 1e-9;

/** Shares are taken of no less than this flow [m3/s] and this head [m]. */
const LEAST_FLOW = 1e-7;
const LEAST_HEAD = 1e-9;
/** A side branch of a tee with a flow below this share of the largest counts as resting. */
const RESTING_SHARE = 1e-9;

/**
 * The largest relative residual [-] of a solution: of continuity at each node, and of the head from the start of the
 * discharge down to each outlet, walked afresh from the flows.
 *
 * Heads beyond a closed branch are not those of the node it leaves, so that the walk starts again there from the head
 * solved for; beyond a side branch that rests likewise, and that one must be driven by no more than the velocity head
 * that holds it, and by no less than nothing.
 * @returns the larger of flow missing/largest flow and head missing/longest way of losses and lift.
 */
export function largestResidual({ branches }: Network, { flows, heads, rootHead }: NetworkSolution): number {
  let largestFlow = LEAST_FLOW;
  for (const flow of flows) largestFlow = Math.max(largestFlow, Math.abs(flow));
  const head: number[] = [];
  const wayLoss: number[] = [];
  let longestWay = LEAST_HEAD;
  let worstHead = 0;
  let worstFlow = 0;
  for (const [b, branch] of branches.entries()) {
    const { teeLoss, parent, outlet } = branch;
    const own = at(flows, b);
    const from = b === 0 ? rootHead : (head[parent] ?? Number.NaN);
    const loss = lossOver(branch.elements, own).head;
    const combined = teeLoss === null ? 0 : combinedHead(teeLoss, at(flows, parent));
    const isResting = teeLoss !== null && Math.abs(own) <= RESTING_SHARE * largestFlow;
    const side = teeLoss === null ? 0 : sideHead(teeLoss, own) + (own > 0 ? combined : 0);
    const way = (wayLoss[parent] ?? 0) + Math.abs(loss) + Math.abs(side);
    const end = branch.shut || isResting ? at(heads, b) : from - loss - side;
    wayLoss.push(way);
    head.push(end);
    if (isResting && !branch.shut) {
      const driving = from - at(heads, b);
      worstHead = Math.max(worstHead, -driving, driving - combined);
    }
    if (outlet !== null && !branch.shut) {
      worstHead = Math.max(worstHead, Math.abs(end - branch.lift));
      longestWay = Math.max(longestWay, way + Math.abs(branch.lift));
    }
    if (outlet === null) {
      let beyond = 0;
      for (const child of branch.children) beyond += at(flows, child);
      worstFlow = Math.max(worstFlow, Math.abs(beyond - own));
    }
  }
  return Math.max(worstFlow / largestFlow, worstHead / longestWay);
}
