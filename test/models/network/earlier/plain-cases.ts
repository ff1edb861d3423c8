/** What the solver finds for loops to which none of the rules of later versions applies. */
import { drawsFrom, mulberry32 } from '../../../random/draw.ts';
import { randomPipework } from '../../../random/pipework.ts';
import { plainPipework } from '../../../random/plain-pipework.ts';
import { modelOf } from '../../example-loops.ts';

/** Flows in m3/s, head in m. */
export interface PlainCase {
  readonly seed: number;
  readonly flow: number;
  readonly head: number;
  readonly outletFlows: readonly number[];
}

const SEEDS = Array.from({ length: 60 }, (_, place) => place + 1);
const FLOWS = [0, 2e-4, 1e-3, 4e-3];

/** Of loops through which water passes. */
export function plainCases(): readonly PlainCase[] {
  return SEEDS.flatMap((seed) => {
    const { system } = modelOf(plainPipework(randomPipework(drawsFrom(mulberry32(seed)))));
    if (!system.passesWater) return [];
    return FLOWS.map((total) => {
      const { flow, head, outletFlows } = system.stateAt(total);
      return { seed, flow, head, outletFlows };
    });
  });
}
