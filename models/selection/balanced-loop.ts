/** Balances a loop as a selection asks, and samples it for all candidates. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type SampledLoop, sampleLoop } from '../duty/sampled-loop.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { hasRequirement } from '../network/margins.ts';
import { pipeworkSystem } from '../network/pipework-system.ts';
import { solving, type Unsolved } from '../network/solve-failure.ts';
import { type Trim, trimNetwork } from '../network/trim.ts';
import type { Balancing } from './options.ts';

/** A loop as a selection takes it. */
export interface BalancedLoop {
  readonly sampled: SampledLoop;
  /** Empty as built. */
  readonly trims: readonly Trim[];
}

export type BalanceFailure =
  | Unsolved
  | { readonly code: 'no-requirement' }
  | { readonly code: 'trim-needs-pipework' }
  | { readonly code: 'trim-needs-requirement'; readonly path: DocumentPath; readonly outlet: string };

/**
 * Throttles a loop where `trimmed` is asked for, and works out what all candidates share.
 *
 * Errors: `no-requirement` where no outlet requires a flow; `trim-needs-pipework` for a loop known by its system
 *   curve alone; `trim-needs-requirement` for an outlet without one; those of the solver.
 */
export function balancedLoop(
  model: CompiledLoop,
  balancing: Balancing,
): Result<BalancedLoop, BalanceFailure> {
  if (!hasRequirement(model.system.outlets)) return failed({ code: 'no-requirement' });
  const balanced = balancing === 'as-built' ? success({ model, trims: [] }) : trim(model);
  if (!balanced.ok) return balanced;
  const { trims } = balanced.value;
  const sampled = solving(() => sampleLoop(balanced.value.model));
  return sampled.ok ? success({ sampled: sampled.value, trims }) : sampled;
}

function trim(
  model: CompiledLoop,
): Result<{ readonly model: CompiledLoop; readonly trims: readonly Trim[] }, BalanceFailure> {
  if (model.network === null) return failed({ code: 'trim-needs-pipework' });
  for (const { outlet } of model.network.branches) {
    if (outlet === null || outlet.requiredFlow !== null) continue;
    return failed({ code: 'trim-needs-requirement', path: outlet.path, outlet: outlet.name });
  }
  const { network, trims } = trimNetwork(model.network);
  return success({ model: { ...model, network, system: pipeworkSystem(network) }, trims });
}
