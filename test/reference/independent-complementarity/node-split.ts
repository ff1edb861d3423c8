/** How the water at a node divides between its branches at a given head and whole flow. */
import { crossing } from '../independent/crossing.ts';
import type { Leg } from './legs.ts';
import { gain, ownHead, runDrop, type Side, sideDrop } from './tee.ts';

/** A leg that answers with the flow that it takes at an entry head; shut legs are left out of `children`. */
export interface Asked {
  readonly leg: Leg;
  /** The greatest entry head at which nothing leaves through the leg. */
  readonly restHead: number;
  readonly children: readonly Asked[];
  /** The part of a tee's loss that grows with a side's own velocity is inside. */
  readonly flowAt: (head: number) => number;
}

/** The end of a leg's run: head [m], and the flow [m3/s] that enters the node by the leg. */
export interface Node {
  readonly leg: Leg;
  readonly head: number;
  readonly flow: number;
}

/** Flow into a branch, and the head at the start of its run, past the tee. */
export interface Part {
  readonly flow: number;
  readonly start: number;
}

/** Flow into one side: out past v_c^2/2g, back below the node's own head, and none between. */
function sideFlow(child: Asked, side: Side, { head, flow: whole }: Node): number {
  const outward = head - sideDrop(side, { side: 0, whole });
  if (outward <= child.restHead) return head < child.restHead ? child.flowAt(head) : 0;
  const most = child.flowAt(outward);
  if (gain(side, { side: most, whole }) === 1) return most;
  const excess = (flow: number): number =>
    flow - child.flowAt(head - sideDrop(side, { side: flow, whole }) + ownHead(side, flow));
  return crossing(excess, [0, -most], [most, excess(most)]);
}

/** Every branch's part of a node's water. */
export function split(children: readonly Asked[], node: Node): readonly Part[] {
  const { head, flow: whole, leg } = node;
  const sides = children.map((child): Part | undefined => {
    const { side } = child.leg;
    if (side === undefined) return undefined;
    const flow = sideFlow(child, side, node);
    return { flow, start: flow === 0 ? head : head - sideDrop(side, { side: flow, whole }) };
  });
  const side = sides.reduce((sum, part) => sum + Math.max(0, part?.flow ?? 0), 0);
  const start = head - (leg.tee === undefined ? 0 : runDrop(leg.tee, { side, whole }));
  return children.map((child, index) => sides[index] ?? { flow: child.flowAt(start), start });
}

export const splitSum = (children: readonly Asked[], node: Node): number =>
  split(children, node).reduce((sum, part) => sum + part.flow, 0);
