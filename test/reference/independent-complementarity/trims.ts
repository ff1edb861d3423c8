/** Losses that level the branches of every split at exactly the required flows. */
import { needsOf } from '../independent/requirements.ts';
import type { Circuit, Leg } from './legs.ts';
import { runDrop, sideDrop } from './tee.ts';

interface Levelled {
  readonly leg: Leg;
  readonly flow: number;
  /** Head [m] at the start of the leg's run that drives exactly the required flows. */
  readonly head: number;
}

const requiredFlow = (leg: Leg): number =>
  needsOf(leg).reduce((sum, need) => {
    if (need.required === undefined) throw new Error(`${need.name} has no requirement`);
    return sum + need.required;
  }, 0);

/** A leg with a further loss of `head` at `flow`. */
function throttled(leg: Leg, head: number, flow: number): Leg {
  const factor = head / flow ** 2;
  return { ...leg, loss: (passing) => leg.loss(passing) + factor * passing * Math.abs(passing) };
}

/** Works from the outlets up: the neediest open child sets the node's head, the others are throttled to it. */
function level(leg: Leg): Levelled {
  const whole = requiredFlow(leg);
  if (leg.shut && whole > 0) throw new Error('a shut branch has a requirement');
  if (whole === 0) return { leg: { ...leg, shut: true }, flow: 0, head: 0 };
  const { end } = leg;
  if (end !== undefined) return { leg, flow: whole, head: end.level + end.exit(whole) + leg.loss(whole) };
  const levelled = leg.children.map(level);
  const side = levelled.reduce((sum, child) => sum + (child.leg.side === undefined ? 0 : child.flow), 0);
  const run = leg.tee === undefined ? 0 : runDrop(leg.tee, { side, whole });
  const entry = ({ leg: child, head, flow }: Levelled): number =>
    head + (child.side === undefined ? run : sideDrop(child.side, { side: flow, whole }));
  const node = Math.max(...levelled.filter((child) => child.flow > 0).map(entry));
  const children = levelled.map((child) =>
    child.flow > 0 ? throttled(child.leg, node - entry(child), child.flow) : child.leg,
  );
  return { leg: { ...leg, children }, flow: whole, head: node + leg.loss(whole) };
}

export const trimmedCircuit = (circuit: Circuit): Circuit => ({ ...circuit, root: level(circuit.root).leg });

/** Head [m] that a pump must add at exactly the required flows. */
export function requiredHead({ suction, root }: Circuit): number {
  const { flow, head } = level(root);
  return suction(flow) + head;
}
