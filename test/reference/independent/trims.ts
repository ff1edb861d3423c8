/** Losses that level the branches of every split at exactly the required flows. */
import type { Circuit, Leg } from './legs.ts';
import { needsOf } from './requirements.ts';

export interface Trim {
  readonly outlets: readonly string[];
  /** Head [m] taken at the required flow [m3/s]; shut where the flow is 0. */
  readonly head: number;
  readonly flow: number;
}

interface Levelled {
  readonly leg: Leg;
  readonly flow: number;
  /** Entry head [m] that drives exactly the required flows, without the tee's v_c term. */
  readonly head: number;
  readonly trims: readonly Trim[];
}

const names = (leg: Leg): readonly string[] => needsOf(leg).map((need) => need.name);

function requiredFlow(leg: Leg): number {
  return needsOf(leg).reduce((sum, need) => {
    if (need.required === undefined) throw new Error(`${need.name} has no requirement`);
    return sum + need.required;
  }, 0);
}

/** A leg with a further loss of `head` at `flow`. */
function throttled(leg: Leg, head: number, flow: number): Leg {
  const factor = head / flow ** 2;
  return { ...leg, loss: (passing) => leg.loss(passing) + factor * passing * Math.abs(passing) };
}

/** Works from the outlets up: the neediest open child sets the node's head, the others are throttled to it. */
function level(leg: Leg): Levelled {
  const flow = requiredFlow(leg);
  if (leg.shut && flow > 0) throw new Error('a shut branch has a requirement');
  if (flow === 0)
    return {
      leg: { ...leg, shut: true },
      flow: 0,
      head: 0,
      trims: [{ outlets: names(leg), head: 0, flow: 0 }],
    };
  if (leg.end !== undefined) {
    const head = (leg.end.outlet.staticHead ?? 0) + leg.end.exit(flow) + leg.loss(flow);
    return { leg, flow, head, trims: [] };
  }
  const levelled = leg.children.map(level);
  const entry = (child: Levelled): number => child.head + (child.leg.side ? leg.combined * flow ** 2 : 0);
  const node = Math.max(...levelled.filter((child) => child.flow > 0).map(entry));
  const children = levelled.map((child) =>
    child.flow > 0 ? throttled(child.leg, node - entry(child), child.flow) : child.leg,
  );
  const own = levelled.flatMap((child) =>
    child.flow > 0 ? [{ outlets: names(child.leg), head: node - entry(child), flow: child.flow }] : [],
  );
  const trims = [...levelled.flatMap((child) => child.trims), ...own];
  return { leg: { ...leg, children }, flow, head: node + leg.loss(flow), trims };
}

export const trimmedCircuit = (circuit: Circuit): Circuit => ({ ...circuit, root: level(circuit.root).leg });

/** The trims themselves, and the head [m] the pump must add at exactly the required flows. */
export function trimsOf({ root, suction, staticHead }: Circuit): { trims: readonly Trim[]; head: number } {
  const { trims, head, flow } = level(root);
  return { trims, head: suction(flow) + staticHead + head };
}
