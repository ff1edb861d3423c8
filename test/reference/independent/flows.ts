/** Flows of a tree of legs by nested bisection on monotone functions. */
import { crossing, type Point } from './crossing.ts';
import type { Circuit, Leg } from './legs.ts';
import { remembered } from './remembered.ts';

export interface OutletFlow {
  readonly name: string;
  readonly flow: number;
}

/** A leg that can be asked for its flow at an entry head; shut legs are left out of `children`. */
interface Asked {
  readonly leg: Leg;
  /** Entry head at which nothing passes. */
  readonly zeroHead: number;
  readonly children: readonly Asked[];
  readonly flowAt: (head: number) => number;
}

const FLOW_STEP = 1e-4;
const HEAD_STEP = 0.1;

/** A side branch of a tee sees the node's head less v_c^2/2g when it flows outward, none of that when it flows back. */
function branchHead(child: Asked, at: Node): number {
  if (!child.leg.side || at.head < child.zeroHead) return at.head;
  const drop = at.flow > 0 ? at.leg.combined * at.flow ** 2 : 0;
  return Math.max(child.zeroHead, at.head - drop);
}

interface Node {
  readonly leg: Leg;
  readonly head: number;
  /** What enters the node with its whole flow. */
  readonly flow: number;
}

const branchSum = (children: readonly Asked[], at: Node): number =>
  children.reduce((sum, child) => sum + child.flowAt(branchHead(child, at)), 0);

/** Head at a node whose branches exchange water without any entering. */
function standingHead(leg: Leg, children: readonly Asked[]): number {
  const heads = children.map((child) => child.zeroHead);
  const [least, most] = [Math.min(...heads), Math.max(...heads)];
  if (least === most) return least;
  const sum = (head: number): number => branchSum(children, { leg, head, flow: 0 });
  const ends: readonly [Point, Point] = [
    [least, sum(least)],
    [most, sum(most)],
  ];
  return crossing(sum, ...ends);
}

function ask(leg: Leg): Asked {
  if (leg.end !== undefined) {
    const { outlet, exit } = leg.end;
    const zeroHead = outlet.staticHead ?? 0;
    const residual = (flow: number, head: number): number => zeroHead + exit(flow) + leg.loss(flow) - head;
    const flowAt = remembered({ residual, start: [zeroHead, 0], step: FLOW_STEP });
    return { leg, zeroHead, children: [], flowAt };
  }
  const children = leg.children.filter((child) => !child.shut).map(ask);
  const zeroHead = standingHead(leg, children);
  const residual = (flow: number, head: number): number =>
    flow - branchSum(children, { leg, head: head - leg.loss(flow), flow });
  const flowAt = remembered({ residual, start: [zeroHead, 0], step: FLOW_STEP });
  return { leg, zeroHead, children, flowAt };
}

/** Notes what leaves at every outlet beyond the end of a leg's run. */
function spread(asked: Asked, at: Node, into: Map<Leg, number>): void {
  if (asked.leg.end !== undefined) into.set(asked.leg, at.flow);
  for (const child of asked.children) {
    const head = branchHead(child, at);
    const flow = child.flowAt(head);
    spread(child, { leg: child.leg, head: head - child.leg.loss(flow), flow }, into);
  }
}

const endsOf = (leg: Leg): readonly Leg[] => (leg.end === undefined ? leg.children.flatMap(endsOf) : [leg]);

/** Head at the end of the root's run as a function of the total flow. */
function rootNode(asked: Asked): (flow: number) => number {
  const { leg, children, zeroHead } = asked;
  if (leg.end !== undefined) {
    const { exit } = leg.end;
    return (flow) => zeroHead + exit(flow);
  }
  const residual = (head: number, flow: number): number => branchSum(children, { leg, head, flow }) - flow;
  return remembered({ residual, start: [0, zeroHead], step: HEAD_STEP });
}

/** The head a pump must add at a total flow, and where that flow goes. */
export interface System {
  readonly head: (flow: number) => number;
  readonly outlets: (flow: number) => readonly OutletFlow[];
}

export function systemOf({ root, suction, staticHead }: Circuit): System {
  if (root.shut) throw new Error('every way out is shut');
  const asked = ask(root);
  const nodeHead = rootNode(asked);
  const head = (flow: number): number => suction(flow) + staticHead + root.loss(flow) + nodeHead(flow);
  const outlets = (flow: number): readonly OutletFlow[] => {
    const into = new Map<Leg, number>();
    spread(asked, { leg: root, head: nodeHead(flow), flow }, into);
    return endsOf(root).map((leg) => ({ name: leg.end?.outlet.name ?? '', flow: into.get(leg) ?? 0 }));
  };
  return { head, outlets };
}
