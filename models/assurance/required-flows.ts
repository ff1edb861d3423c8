/** A loop with other required flows on the same pipework. */
import type { LoopModel } from '../network/loop-model.ts';
import type { Network, NetworkOutlet } from '../network/network.ts';
import { pipeworkSystem } from '../network/pipework-system.ts';

/** Required flows times `factor`, those that a reach takes included. */
export function withRequiredFlows(model: LoopModel, factor: number): LoopModel {
  const times = (flow: number | null) => (flow === null ? null : factor * flow);
  const { network, system } = model;
  if (network !== null) {
    return withNetwork(
      model,
      withOutlets(network, (outlet) => ({ ...outlet, requiredFlow: times(outlet.requiredFlow) })),
    );
  }
  const outlets = system.outlets.map((outlet) => ({ ...outlet, requiredFlow: times(outlet.requiredFlow) }));
  return { ...model, system: { ...system, outlets } };
}

/** `model` with the outlets that `source`, of the same pipework, states. */
export function withOutletsOf(model: LoopModel, source: LoopModel): LoopModel {
  if (model.network === null) {
    return { ...model, system: { ...model.system, outlets: source.system.outlets } };
  }
  return withNetwork(
    model,
    withOutlets(model.network, (_, branch) => source.network?.branches[branch]?.outlet ?? null),
  );
}

const withNetwork = (model: LoopModel, network: Network): LoopModel => ({
  ...model,
  network,
  system: pipeworkSystem(network),
});

const withOutlets = (
  network: Network,
  change: (outlet: NetworkOutlet, branch: number) => NetworkOutlet | null,
): Network => ({
  ...network,
  branches: network.branches.map((branch, place) =>
    branch.outlet === null ? branch : { ...branch, outlet: change(branch.outlet, place) },
  ),
});
