/** Closes outlets of a compiled loop. */
import type { CompiledLoop } from './compiled-loop.ts';
import type { Network, NetworkBranch } from './network.ts';
import { pipeworkSystem } from './pipework-system.ts';

/** The loop with outlets closed; null for an outlet that it has not, and for a loop whose pipework is not known. */
export function shutOff(loop: CompiledLoop, names: readonly string[]): CompiledLoop | null {
  if (names.length === 0) return loop;
  const { network, system } = loop;
  if (network === null || names.some((name) => system.outlets.every((outlet) => outlet.name !== name))) {
    return null;
  }
  const changed = withShut(network, new Set(names));
  return { ...loop, network: changed, system: pipeworkSystem(changed) };
}

/** The network with the outlets of some names closed, and every branch closed beyond which all is closed. */
export function withShut(network: Network, names: ReadonlySet<string>): Network {
  const branches: NetworkBranch[] = [...network.branches];
  for (let b = branches.length - 1; b >= 0; b--) {
    const branch = branches[b];
    if (branch === undefined) continue;
    const { outlet, children } = branch;
    const isShut =
      outlet === null ? children.every((child) => branches[child]?.shut === true) : names.has(outlet.name);
    if (isShut && !branch.shut) branches[b] = { ...branch, shut: true };
  }
  return { ...network, branches };
}
