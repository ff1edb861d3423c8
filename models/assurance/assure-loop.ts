/** Makes the worst case that a setting must serve in as well: a pump, a demand or a friction worse than entered. */
import { type Result, success } from '../../curves/result.ts';
import { sampleLoop } from '../duty/sampled-loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { withMoreFriction } from '../network/more-friction.ts';
import type { Network, NetworkOutlet } from '../network/network.ts';
import { pipeworkSystem } from '../network/pipework-system.ts';
import { requiredDuty } from '../network/required-duty.ts';
import { solving } from '../network/solve-failure.ts';
import type { CalibratedAssurance } from '../pump/calibrated-fit.ts';
import { pumpEnds } from '../pump/pump-at-tolerance.ts';
import { pumpWithHead } from '../pump/pump-with-head.ts';
import { type Grade, toleranceOf } from '../pump/tolerance-grades.ts';
import { type BalancedLoop, type BalanceFailure, balancedLoop } from '../selection/balanced-loop.ts';
import type { Balancing } from '../selection/options.ts';
import type { WorstCase } from '../selection/select.ts';

/** What a setting must serve in as well: a grade, a margin [-], a friction multiplier [-] or a calibration. */
export type Assurance =
  /** Every pump at the low end of this grade and of its own fit. */
  | { readonly grade: Grade }
  /** Required flows times (1 + margin), 0 or more. */
  | { readonly margin: number }
  /** Friction times this, 1 or more, on top of the loop's own multiplier. */
  | { readonly frictionMultiplier: number }
  /** The worst case within the calibrated interval. */
  | CalibratedAssurance;

/** A loop made ready for a selection that holds in a worst case as well. */
export interface AssuredLoop {
  /** As entered: what the answer's figures are taken on. */
  readonly nominal: BalancedLoop;
  readonly worstCase: WorstCase;
}

/**
 * The loop as entered and in the worst case of `assurance`; `balanced` is the loop without it.
 *
 * Trims are set once: for a margin at the required flows times (1 + margin), otherwise at the required flows;
 * friction that grows later finds them as they were set.
 * Errors: those of `balancedLoop` and of the solver.
 */
export function assureLoop(
  model: CompiledLoop,
  {
    balanced,
    balancing,
    assurance,
  }: {
    readonly balanced: BalancedLoop;
    readonly balancing: Balancing;
    readonly assurance: Assurance;
  },
): Result<AssuredLoop, BalanceFailure> {
  if ('grade' in assurance) {
    const { low } = pumpEnds(toleranceOf(assurance.grade));
    return success({ nominal: balanced, worstCase: { sampled: balanced.sampled, pumpAt: low } });
  }
  if ('margin' in assurance) return withMargin(model, { balancing, margin: assurance.margin });
  const isCalibrated = 'calibration' in assurance;
  const multiplier = isCalibrated ? assurance.calibration.friction : assurance.frictionMultiplier;
  const worst = solving(() => sampleLoop(withMoreFriction(balanced.sampled.loop, multiplier)));
  if (!worst.ok) return worst;
  const pumpAt = isCalibrated ? { pumpAt: pumpWithHead(assurance.calibration) } : {};
  return success({ nominal: balanced, worstCase: { sampled: worst.value, ...pumpAt } });
}

/** The same pipework, trims for the larger flows included, seen with both lists of required flows. */
function withMargin(
  model: CompiledLoop,
  { balancing, margin }: { readonly balancing: Balancing; readonly margin: number },
): Result<AssuredLoop, BalanceFailure> {
  const demanding = balancedLoop(withRequiredFlows(model, 1 + margin), balancing);
  if (!demanding.ok) return demanding;
  const { sampled, trims } = demanding.value;
  const loop = withOutletsOf(sampled.loop, model);
  const required = solving(() => requiredDuty(loop.system));
  if (!required.ok) return required;
  const nominal = { sampled: { ...sampled, loop, required: required.value }, trims };
  return success({ nominal, worstCase: { sampled } });
}

/** Required flows times `factor`, those that a reach takes included. */
function withRequiredFlows(model: CompiledLoop, factor: number): CompiledLoop {
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
function withOutletsOf(model: CompiledLoop, source: CompiledLoop): CompiledLoop {
  if (model.network === null) {
    return { ...model, system: { ...model.system, outlets: source.system.outlets } };
  }
  return withNetwork(
    model,
    withOutlets(model.network, (_, branch) => source.network?.branches[branch]?.outlet ?? null),
  );
}

const withNetwork = (model: CompiledLoop, network: Network): CompiledLoop => ({
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
