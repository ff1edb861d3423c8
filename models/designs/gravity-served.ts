/** Finds whether some of the candidate sizes serve a loop without any pump. */
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { pipeworkSystem } from '../network/pipework-system.ts';
import { trimNetwork } from '../network/trim.ts';
import { type Gravity, servedByGravity } from '../selection/gravity.ts';

/**
 * What runs without a pump with the sizes that require least head, each branch trimmed; null where they require some.
 * `leastHead` [m] is theirs. Throws `SolveFailure` where the network does not settle.
 */
export function gravityServed(model: CompiledLoop, leastHead: number): Gravity | null {
  if (leastHead > 0 || model.network === null) return null;
  const { network } = trimNetwork(model.network);
  const system = pipeworkSystem(network);
  const atRest = system.passesWater ? system.stateAt(0) : null;
  return servedByGravity({ loop: { ...model, network, system }, atRest });
}
