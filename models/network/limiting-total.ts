/** Finds the total flow at which the first of some outlets receives just its required flow. */

import { at } from '../../curves/at.ts';
import { findRoot } from '../../curves/find-root.ts';
import type { System } from './system.ts';

/** Where the first outlet falls below its required flow. */
export interface LimitingTotal {
  readonly outlet: string;
  /** [m3/s]; that of the end of the search where more than twice the flow would be needed. */
  readonly flow: number;
}

const SEARCHED_MOST = 2;

/**
 * The total flow at which the first of some outlets receives just its required flow.
 *
 * Shares of outlets follow from the total alone, so whatever takes flow before the split, this is where the first of
 * them falls below its required flow; with outlets at unlike heights it is not the share that the total fell by.
 * @param flow where the total is by the data [m3/s], above 0.
 * @param isAsked by the place of an outlet, whether it counts.
 * @returns null where none of them requires a flow.
 */
export function limitingTotal(
  system: System,
  flow: number,
  isAsked: (place: number) => boolean,
): LimitingTotal | null {
  const asked = system.outlets.flatMap(({ name, requiredFlow }, place) =>
    requiredFlow === null || requiredFlow <= 0 || !isAsked(place) ? [] : [{ name, requiredFlow, place }],
  );
  if (asked.length === 0) return null;
  const least = (total: number) => {
    const { outletFlows } = system.stateAt(total);
    const margins = asked.map(({ name, requiredFlow, place }) => ({
      name,
      margin: at(outletFlows, place) / requiredFlow - 1,
    }));
    return margins.reduce((lowest, one) => (one.margin < lowest.margin ? one : lowest));
  };
  const now = least(flow);
  const end = now.margin >= 0 ? 0 : SEARCHED_MOST * flow;
  const root = findRoot({
    evaluate: (total) => ({ value: least(total).margin }),
    low: Math.min(flow, end),
    high: Math.max(flow, end),
  });
  const found = root.ok ? root.value.root : end;
  return { outlet: least(found).name, flow: found };
}
