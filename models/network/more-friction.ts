/** Makes the pipework of a loop resist more than entered. */

import { scaled } from '../components/resistance.ts';
import { type CompiledLoop, compileLoop } from './compiled-loop.ts';
import type { Network, PlacedResistance } from './network.ts';
import { pipeworkSystem } from './pipework-system.ts';
import { teeLossTimes } from './tee-branch-loss.ts';

/** What stays as it is: entrance and exit are no friction, and a trim was set once. */
const UNTOUCHED: ReadonlySet<PlacedResistance['kind']> = new Set(['intake', 'outlet', 'trim']);

/**
 * The loop with every element of a run, the losses at tees, or the k of a system curve, times `multiplier` [-], above
 * 0.
 */
export function withMoreFriction(model: CompiledLoop, multiplier: number): CompiledLoop {
  if (model.network === null) return rebuilt(model, multiplier);
  const network = resisting(model.network, multiplier);
  return { ...model, network, system: pipeworkSystem(network) };
}

function rebuilt({ entered: loop, system: { outlets } }: CompiledLoop, multiplier: number): CompiledLoop {
  const model = compileLoop({ ...loop, frictionMultiplier: multiplier * loop.frictionMultiplier });
  // The loop was built before, and nothing that can fail depends on its multiplier.
  if (!model.ok) throw new Error(`the loop does not build: ${model.failure.code}`);
  return { ...model.value, system: { ...model.value.system, outlets } };
}

function resisting(network: Network, multiplier: number): Network {
  const heavier = (elements: readonly PlacedResistance[]) =>
    elements.map((one) =>
      UNTOUCHED.has(one.kind) ? one : { ...one, resistance: scaled(one.resistance, multiplier) },
    );
  return {
    ...network,
    suction: heavier(network.suction),
    branches: network.branches.map((branch) => ({
      ...branch,
      elements: heavier(branch.elements),
      teeLoss: branch.teeLoss === null ? null : teeLossTimes(branch.teeLoss, multiplier),
    })),
  };
}
