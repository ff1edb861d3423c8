/** Finds what gauges on the walls of pipes do not show: the velocity head of the water that passes. */

import type { Gauges } from '../loop/loop.ts';
import { lastBore } from '../network/bores.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { GRAVITY } from '../physics/gravity.ts';

/** At both gauges. */
export interface VelocityHeads {
  /** [m] */
  readonly suction: number;
  /** [m] */
  readonly discharge: number;
}

const NONE: VelocityHeads = { suction: 0, discharge: 0 };

/**
 * Velocity heads V^2/2g = 8 Q^2/(pi^2 g d^4) [m] at both gauges.
 *
 * @param gauges bores d [m]; undefined: not stated, and the pressures are taken as those of bores alike.
 * @param flow Q [m3/s] of 0 or more.
 * Source: ISO 9906, total head of a pump: that of the pressures, and the rise of the velocity heads.
 */
export function velocityHeads(gauges: Gauges | undefined, flow: number): VelocityHeads {
  if (gauges === undefined) return NONE;
  const at = (diameter: number) => (8 * flow ** 2) / (Math.PI ** 2 * GRAVITY * diameter ** 4);
  return { suction: at(gauges.suctionDiameter), discharge: at(gauges.dischargeDiameter) };
}

/** By how much the velocity head rises from the suction gauge to that of the discharge [m], at a flow [m3/s]. */
export function velocityRise(gauges: Gauges | undefined, flow: number): number {
  const { suction, discharge } = velocityHeads(gauges, flow);
  return discharge - suction;
}

/** Share of the head from which on bores that are not stated matter. */
const MATTERS = 0.02;

/**
 * Whether gauges in the pipes at the pump would be off by more than 2 % of its head by their velocity heads, while
 * their bores are not stated.
 *
 * @param duty flow [m3/s] and head [m].
 */
export function lacksGauges(
  { entered: loop, network }: CompiledLoop,
  { flow, head }: { readonly flow: number; readonly head: number },
): boolean {
  if (loop.gauges !== undefined || network === null || !('suction' in loop)) return false;
  const [suctionDiameter, dischargeDiameter] = [
    lastBore(loop.suction),
    network.branches[0]?.nearBore ?? null,
  ];
  if (suctionDiameter === null || dischargeDiameter === null) return false;
  return Math.abs(velocityRise({ suctionDiameter, dischargeDiameter }, flow)) > MATTERS * head;
}
