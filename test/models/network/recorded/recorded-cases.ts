/** What the present solver finds for the loops of the record. */
import { modelOf } from '../../example-loops.ts';
import { plainLoop } from './plain-loop.ts';

/** Flows in m3/s, head in m. */
export interface RecordedCase {
  readonly seed: number;
  readonly flow: number;
  readonly head: number;
  readonly outletFlows: readonly number[];
}

const SEEDS = Array.from({ length: 60 }, (_, place) => place + 1);
const FLOWS = [0, 2e-4, 1e-3, 4e-3];

/** Of loops through which water passes. */
export function recordedCases(): readonly RecordedCase[] {
  return SEEDS.flatMap((seed) => {
    const { system } = modelOf(plainLoop(seed));
    if (!system.passesWater) return [];
    return FLOWS.map((total) => {
      const { flow, head, outletFlows } = system.stateAt(total);
      return { seed, flow, head, outletFlows };
    });
  });
}
