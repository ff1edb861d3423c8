/** Finds the least total flow at which every outlet receives its required flow, whatever the pump. */

import { at } from '../../curves/at.ts';
import { findRoot } from '../../curves/find-root.ts';
import { hasRequirement } from './margins.ts';
import { SolveFailure } from './solve-failure.ts';
import type { System, SystemState } from './system.ts';

/** What a loop requires of any pump. */
export interface RequiredDuty {
  /** Total flow [m3/s]. */
  readonly flow: number;
  /** That the loop needs at that flow [m]. */
  readonly head: number;
  /** The outlet that reaches its required flow last. */
  readonly limitingOutlet: string;
}

/** Trial flows are this ratio apart, from this share of the sum of the required flows on, this many at most. */
const TRIALS = { ratio: 1.15, from: 0.5, most: 120 } as const;

/** Of the required flow in all: an outlet that rests does not run backwards, and is not what limits. */
const NOT_BACKWARDS = 1e-9;

interface Need {
  readonly index: number;
  /** [m3/s]; 0: water must only not run backwards. */
  readonly flow: number;
}

interface Trial {
  readonly state: SystemState;
  readonly outlet: number;
  /** Least of flow/required - 1 over the outlets, and its slope against total flow; where 0 is required, of the share. */
  readonly margin: number;
  readonly slope: number;
}

/**
 * Total flow [m3/s] and head [m] at which the last outlet reaches its required flow.
 *
 * Trial flows rise geometrically to the first at which every outlet receives its required flow, then the crossing is
 * found by `findRoot`.
 * @returns null where no outlet requires a flow above 0, where no water passes, or where 120 trials (to about 10^7
 *   times the required flow) are not enough.
 * Errors: throws `SolveFailure` where the network does not settle.
 */
export function requiredDuty(system: System): RequiredDuty | null {
  if (!hasRequirement(system.outlets) || !system.passesWater) return null;
  const needs = system.outlets.flatMap(({ requiredFlow: flow }, index) =>
    flow === null ? [] : [{ index, flow }],
  );
  const sum = needs.reduce((total, need) => total + need.flow, 0);
  let near: SystemState | undefined;
  const tryFlow = (flow: number): Trial => {
    near = system.stateAt(flow, near);
    return worstServed(needs, near, sum);
  };
  const atRest = tryFlow(0);
  if (atRest.margin >= 0) return dutyOf(system, atRest);
  let low = 0;
  let lowMargin = atRest.margin;
  let flow = TRIALS.from * sum;
  for (let trial = 0; trial < TRIALS.most; trial++) {
    const { margin } = tryFlow(flow);
    if (margin >= 0) return crossing(system, tryFlow, { low, lowMargin, high: flow, highMargin: margin });
    low = flow;
    lowMargin = margin;
    flow *= TRIALS.ratio;
  }
  return null;
}

function worstServed(needs: readonly Need[], state: SystemState, sum: number): Trial {
  let worst: Trial | null = null;
  for (const { index, flow } of needs) {
    const scale = flow > 0 ? flow : sum;
    const margin = (at(state.outletFlows, index) - flow) / scale + (flow > 0 ? 0 : NOT_BACKWARDS);
    if (worst !== null && margin >= worst.margin) continue;
    worst = { state, outlet: index, margin, slope: at(state.outletSlopes, index) / scale };
  }
  if (worst === null) throw new Error('no outlet requires a flow');
  return worst;
}

function crossing(
  system: System,
  tryFlow: (flow: number) => Trial,
  { low, lowMargin, high, highMargin }: { low: number; lowMargin: number; high: number; highMargin: number },
): RequiredDuty {
  const root = findRoot({
    evaluate: (flow) => {
      const { margin, slope } = tryFlow(flow);
      return { value: margin, slope };
    },
    low,
    high,
    lowValue: lowMargin,
    highValue: highMargin,
  });
  if (!root.ok) throw new SolveFailure(root.failure);
  return dutyOf(system, tryFlow(root.value.root));
}

function dutyOf(system: System, { state, outlet }: Trial): RequiredDuty {
  const limitingOutlet = system.outlets[outlet]?.name;
  if (limitingOutlet === undefined) throw new Error(`outlet ${outlet} is not in the system`);
  return { flow: state.flow, head: state.head, limitingOutlet };
}
