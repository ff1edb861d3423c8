/** Free outlets that no water reaches, and whether the line to them takes in air. */

import type { Solution } from './flows.ts';
import type { Leg } from './legs.ts';

export interface RestingOutlet {
  readonly outlet: string;
  readonly code: 'outlet-dry' | 'air-drawn';
  /** Head [m] at the start of the outlet's run, and the level or elevation [m] that it does not reach. */
  readonly value: number;
  readonly limit: number;
}

export function restingOutlets(
  leg: Leg,
  solution: Solution,
  above: readonly number[] = [],
): readonly RestingOutlet[] {
  const elevations = leg.elevation === undefined ? above : [...above, leg.elevation];
  if (leg.end === undefined)
    return leg.children.flatMap((child) => restingOutlets(child, solution, elevations));
  const state = solution.get(leg);
  if (!leg.end.free || state === undefined || state.flow !== 0) return [];
  const value = state.start;
  const highest = Math.max(...elevations);
  const common = { outlet: leg.end.outlet.name, value };
  return highest > value
    ? [{ ...common, code: 'air-drawn', limit: highest }]
    : [{ ...common, code: 'outlet-dry', limit: leg.end.level }];
}
