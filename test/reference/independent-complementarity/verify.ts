/** Judges the flows of a network from the outlets' flows alone: continuity, heads along every path, closed and resting ways. */
import type { OutletFlow } from '../independent/flows.ts';
import type { Circuit, Leg } from './legs.ts';
import { runDrop, sideDrop } from './tee.ts';

/** Heads [m] at one place that the flows beyond it allow; `gap` is by how much they contradict each other. */
interface Allowed {
  readonly low: number;
  readonly high: number;
  readonly gap: number;
}

/** A flow [m3/s] under this is none. */
const NONE = 1e-13;

const exactly = (head: number): Allowed => ({ low: head, high: head, gap: 0 });
const atMost = (head: number): Allowed => ({ low: Number.NEGATIVE_INFINITY, high: head, gap: 0 });

const raised = ({ low, high, gap }: Allowed, by: number, further = 0): Allowed => ({
  low: low + by,
  high: high + by + further,
  gap,
});

/** What all of several places allow; where they contradict each other the middle is taken. */
function common(all: readonly Allowed[]): Allowed {
  const low = Math.max(...all.map((one) => one.low));
  const high = Math.min(...all.map((one) => one.high));
  const gap = Math.max(0, low - high, ...all.map((one) => one.gap));
  return low <= high ? { low, high, gap } : { ...exactly((low + high) / 2), gap };
}

type FlowOf = (leg: Leg) => number;

const sideSum = (leg: Leg, flowOf: FlowOf): number =>
  leg.children.reduce((sum, child) => sum + (child.side && !child.shut ? Math.max(0, flowOf(child)) : 0), 0);

/** Heads at a node that one of its branches allows. */
function throughTee(leg: Leg, child: Leg, flowOf: FlowOf): Allowed {
  const beyond = allowedBefore(child, flowOf);
  const whole = flowOf(leg);
  if (child.side === undefined)
    return leg.tee === undefined
      ? beyond
      : raised(beyond, runDrop(leg.tee, { side: sideSum(leg, flowOf), whole }));
  const flow = flowOf(child);
  const drop = sideDrop(child.side, { side: Math.abs(flow) < NONE ? 0 : flow, whole });
  return Math.abs(flow) < NONE ? raised(beyond, 0, drop) : raised(beyond, drop);
}

/** Heads at the start of a leg's run that its flow, and those beyond it, allow. */
function allowedBefore(leg: Leg, flowOf: FlowOf): Allowed {
  const flow = flowOf(leg);
  const open = leg.children.filter((child) => !child.shut);
  const { end, loss } = leg;
  const after =
    end === undefined
      ? common(open.map((child) => throughTee(leg, child, flowOf)))
      : exactly(end.level + end.exit(flow));
  const cut = leg.oneWay || (end?.free ?? false);
  if (!cut || flow > NONE) return raised(after, loss(flow));
  return { ...atMost(after.high), gap: Math.max(after.gap, -flow > NONE ? Number.POSITIVE_INFINITY : 0) };
}

/** The worst contradiction [m] among heads when the root's run starts at `head` less the suction's loss. */
export function mismatch({ root, suction }: Circuit, flows: readonly OutletFlow[], head: number): number {
  const at = new Map(flows.map(({ name, flow }) => [name, flow]));
  const flowOf = (leg: Leg): number => {
    if (leg.shut) return 0;
    if (leg.end !== undefined) return at.get(leg.end.outlet.name) ?? Number.NaN;
    return leg.children.reduce((sum, child) => sum + flowOf(child), 0);
  };
  const allowed = allowedBefore(root, flowOf);
  const start = head - suction(Math.max(0, flowOf(root)));
  return common([allowed, exactly(start)]).gap;
}

/** The greatest share of a node's whole flow that leaves by the sides of a reducing tee. */
export function greatestSideShare({ root }: Circuit, flows: readonly OutletFlow[]): number {
  const at = new Map(flows.map(({ name, flow }) => [name, flow]));
  let greatest = 0;
  const flowOf = (leg: Leg): number => {
    if (leg.shut) return 0;
    if (leg.end !== undefined) return at.get(leg.end.outlet.name) ?? Number.NaN;
    const each = leg.children.map(flowOf);
    const whole = each.reduce((sum, flow) => sum + flow, 0);
    const side = each.slice(1).reduce((sum, flow) => sum + Math.max(0, flow), 0);
    if (
      leg.tee !== undefined &&
      whole > 0 &&
      leg.children.some(({ side: law }) => law && law.ratio < 1 - 1e-9)
    )
      greatest = Math.max(greatest, side / whole);
    return whole;
  };
  flowOf(root);
  return greatest;
}
