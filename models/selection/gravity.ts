/** Finds whether a loop is served without any pump, by water that falls to its outlets. */
import { findRoot } from '../../curves/find-root.ts';
import type { SampledLoop } from '../duty/sampled-loop.ts';
import { hasRequirement } from '../network/margins.ts';
import { SolveFailure } from '../network/solve-failure.ts';
import type { System, SystemState } from '../network/system.ts';
import { holds } from './criterion.ts';
import { noneReversed, outletsBelowMaximum, outletsServed } from './outlet-criteria.ts';

/** Flows [m3/s]. */
export interface Gravity {
  /** What runs without a pump, and without the resistance of one. */
  readonly flow: number;
  /** Of all outlets together. */
  readonly required: number;
}

/** Trial flows are this ratio apart, from this flow [m3/s] on, this many at most. */
const TRIALS = { ratio: 1.5, from: 1e-6, most: 120 } as const;

/**
 * The flow at which the loop needs no head, Hsys(Q) = 0, where that serves every outlet, exceeds no maximum and reverses
 * no outlet; null where it does not, where the loop needs head from the first drop on, or where no outlet requires a flow.
 * Throws `SolveFailure` where network or search reach a limit.
 */
export function servedByGravity({
  loop: { system },
  atRest,
}: Pick<SampledLoop, 'loop' | 'atRest'>): Gravity | null {
  if (atRest === null || !(atRest.head < 0) || !hasRequirement(system.outlets)) return null;
  const state = fallingState(system, atRest);
  if (state === null) return null;
  const { outlets } = system;
  const criteria = [...outletsServed(outlets), ...outletsBelowMaximum(outlets), noneReversed(outlets)];
  const place = { setting: 0, outletFlows: state.outletFlows, deadHead: false };
  if (!criteria.every(({ judge }) => holds(judge(place)))) return null;
  const required = outlets.reduce((sum, { requiredFlow }) => sum + (requiredFlow ?? 0), 0);
  return { flow: state.flow, required };
}

function fallingState(system: System, atRest: SystemState): SystemState | null {
  let low = atRest;
  for (let trial = 0; trial < TRIALS.most; trial++) {
    const high = system.stateAt(TRIALS.from * TRIALS.ratio ** trial, low);
    if (high.head >= 0) return stateWithoutHead(system, { low, high });
    low = high;
  }
  return null;
}

function stateWithoutHead(
  system: System,
  { low, high }: { readonly low: SystemState; readonly high: SystemState },
): SystemState {
  let near = high;
  const stateAt = (flow: number) => {
    near = system.stateAt(flow, near);
    return near;
  };
  const root = findRoot({
    evaluate: (flow) => {
      const { head: value, slope } = stateAt(flow);
      return { value, slope };
    },
    low: low.flow,
    high: high.flow,
    lowValue: low.head,
    highValue: high.head,
  });
  if (!root.ok) throw new SolveFailure(root.failure);
  return stateAt(root.value.root);
}
