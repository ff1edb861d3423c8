/** Finds how far the stream of each outlet keeps a velocity. */

import { at } from '../../curves/at.ts';
import { reachOf } from '../components/jet.ts';
import type { CompiledLoop } from './compiled-loop.ts';

/** How far a stream keeps a velocity. */
export interface OutletReach {
  /** [m/s] */
  readonly velocity: number;
  /** On the axis, from the nozzle [m]. */
  readonly distance: number;
}

/**
 * The reach of every outlet as a free round jet from its nozzle, else from its last pipe, in the order of the loop.
 *
 * @param velocity [m/s] that counts for all outlets; null: that which each outlet states for its own reach.
 * @returns null for an outlet without a velocity, or whose bore is not known; distance 0 where it leaves slower than that.
 */
export function outletReaches(
  { system, network }: CompiledLoop,
  outletFlows: readonly number[],
  velocity: number | null,
): readonly (OutletReach | null)[] {
  return system.outlets.map((_, i) => {
    const branch = network?.outlets[i];
    const outlet = branch === undefined ? undefined : network?.branches[branch]?.outlet;
    const counted = velocity ?? outlet?.reach?.velocity;
    const { area, nozzleDiameter } = outlet ?? { area: null, nozzleDiameter: null };
    if (counted === undefined || area === null || nozzleDiameter === null) return null;
    const exitVelocity = at(outletFlows, i) / area;
    return { velocity: counted, distance: reachOf({ velocity: counted, exitVelocity, nozzleDiameter }) };
  });
}
