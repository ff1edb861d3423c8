/** Flows of a tree of legs by nested scalar solutions, one-way runs and free outlets cut off at no flow. */
import type { OutletFlow } from '../independent/flows.ts';
import { remembered } from '../independent/remembered.ts';
import type { Circuit, Leg } from './legs.ts';
import { type Asked, split, splitSum } from './node-split.ts';
import { ownHead } from './tee.ts';

const FLOW_STEP = 1e-4;
const HEAD_STEP = 0.1;
const HALVINGS = 100;

/** The greatest head at which the branches of a node, fed by nothing, let nothing out in sum. */
function settledHead(leg: Leg, children: readonly Asked[]): number {
  const heads = children.map((child) => child.restHead);
  let low = Math.min(...heads);
  let high = Math.max(...heads);
  const letsOut = (head: number): boolean => splitSum(children, { leg, head, flow: 0 }) > 0;
  if (!letsOut(high)) return high;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (letsOut(middle)) high = middle;
    else low = middle;
  }
  return low;
}

interface Way {
  readonly oneWay: boolean;
  readonly restHead: number;
  /** Falls with the head and rises with the flow; 0 at no flow and the rest head. */
  readonly residual: (flow: number, head: number) => number;
}

/** Flow at a head; a one-way leg passes nothing up to its rest head. */
function flowThrough({ oneWay, restHead, residual }: Way): (head: number) => number {
  const flowAt = remembered({ residual, start: [restHead, 0], step: FLOW_STEP });
  return (head) => (oneWay && head <= restHead ? 0 : flowAt(head));
}

function ask(leg: Leg): Asked {
  const { end, side, loss, oneWay } = leg;
  const entry = (flow: number): number => loss(flow) + (side === undefined ? 0 : ownHead(side, flow));
  if (end !== undefined) {
    const residual = (flow: number, head: number): number => end.level + end.exit(flow) + entry(flow) - head;
    const flowAt = flowThrough({ oneWay: oneWay || end.free, restHead: end.level, residual });
    return { leg, restHead: end.level, children: [], flowAt };
  }
  const children = leg.children.filter((child) => !child.shut).map(ask);
  const restHead = settledHead(leg, children);
  const residual = (flow: number, head: number): number =>
    flow - splitSum(children, { leg, head: head - entry(flow), flow });
  return { leg, restHead, children, flowAt: flowThrough({ oneWay, restHead, residual }) };
}

/** Head [m] at the start of a leg's run and at its end, and the flow [m3/s] between. */
export interface LegState {
  readonly start: number;
  readonly flow: number;
  readonly end: number;
}

export type Solution = ReadonlyMap<Leg, LegState>;

/** Notes the states of a leg and of all beyond it; where nothing passes, the branches beyond settle among themselves. */
function spread(asked: Asked, state: LegState, into: Map<Leg, LegState>): void {
  const { leg, children, restHead } = asked;
  const end = state.flow === 0 && children.length > 0 ? restHead : state.end;
  into.set(leg, { ...state, end });
  const parts = split(children, { leg, head: end, flow: state.flow });
  for (const [index, child] of children.entries()) {
    const { flow, start } = parts[index] ?? { flow: Number.NaN, start: Number.NaN };
    spread(child, { flow, start, end: start - child.leg.loss(flow) }, into);
  }
}

/** Head at the end of the root's run as a function of the total flow, which is not below 0. */
function rootNode({ leg, children, restHead }: Asked): (flow: number) => number {
  const { end } = leg;
  if (end !== undefined) return (flow) => end.level + end.exit(flow);
  const residual = (head: number, flow: number): number => splitSum(children, { leg, head, flow }) - flow;
  const headAt = remembered({ residual, start: [0, restHead], step: HEAD_STEP });
  return (flow) => (flow === 0 ? restHead : headAt(flow));
}

const endsOf = (leg: Leg): readonly Leg[] => (leg.end === undefined ? leg.children.flatMap(endsOf) : [leg]);

/** The head a pump must add at a total flow of 0 or more, and where that flow goes. */
export interface System {
  readonly head: (flow: number) => number;
  readonly outlets: (flow: number) => readonly OutletFlow[];
  /** States of every leg that is not beyond a shut valve. */
  readonly solution: (flow: number) => Solution;
}

export function systemOf({ root, suction }: Circuit): System {
  if (root.shut) throw new Error('every way out is shut');
  const asked = ask(root);
  const nodeHead = rootNode(asked);
  const solution = (flow: number): Solution => {
    const into = new Map<Leg, LegState>();
    const end = nodeHead(flow);
    spread(asked, { start: end + root.loss(flow), flow, end }, into);
    return into;
  };
  const outlets = (flow: number): readonly OutletFlow[] => {
    const states = solution(flow);
    return endsOf(root).map((leg) => ({
      name: leg.end?.outlet.name ?? '',
      flow: states.get(leg)?.flow ?? 0,
    }));
  };
  return { head: (flow) => suction(flow) + root.loss(flow) + nodeHead(flow), outlets, solution };
}
