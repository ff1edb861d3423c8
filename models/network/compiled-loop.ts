/** Compiles a loop into its system and the facts that duty, limits and cautions need. */
import { failed, type Result, success } from '../../curves/result.ts';
import { fitSystemCurve, type SystemCurve, type SystemCurveFailure } from '../../curves/system-curve.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Loop, ShareOutlet } from '../loop/loop.ts';
import { type WaterProperties, waterProperties } from '../physics/water.ts';
import { buildNetwork } from './build-network.ts';
import type { Network } from './network.ts';
import { pipeworkSystem } from './pipework-system.ts';
import type { NetworkFailure } from './place-elements.ts';
import type { System } from './system.ts';

/** A loop made ready for computing. */
export interface CompiledLoop {
  /** As its user entered it. */
  readonly entered: Loop;
  readonly water: WaterProperties;
  readonly system: System;
  /** Null for a loop known by its system curve alone. */
  readonly network: Network | null;
}

/** Why a loop does not compile, with the place in its document. */
export type LoopFailure = NetworkFailure | (SystemCurveFailure & { readonly path: DocumentPath });

/**
 * Compiles a loop: the properties of its water, and its system by pipework or by system curve.
 *
 * Errors: those of `buildNetwork` and `fitSystemCurve`, with the place in the document that does not make sense.
 */
export function compileLoop(loop: Loop): Result<CompiledLoop, LoopFailure> {
  const water = waterProperties(loop.water);
  if ('systemCurve' in loop) {
    const { points, staticHead } = loop.systemCurve;
    const curve = fitSystemCurve(points, staticHead);
    if (!curve.ok) return failed({ ...curve.failure, path: ['systemCurve', 'points'] });
    return success({ entered: loop, water, system: curveSystem(curve.value, loop), network: null });
  }
  const network = buildNetwork(loop);
  if (!network.ok) return network;
  return success({ entered: loop, water, system: pipeworkSystem(network.value), network: network.value });
}

/** Head = staticHead + coefficient x frictionMultiplier x Q^2; suction losses are part of the curve and not known by themselves. */
function curveSystem(
  curve: SystemCurve,
  {
    outlets,
    frictionMultiplier,
  }: { readonly outlets: readonly ShareOutlet[]; readonly frictionMultiplier: number },
): System {
  const coefficient = curve.coefficient * frictionMultiplier;
  const shares = outlets.map((outlet) => outlet.share);
  return {
    outlets: outlets.map(({ name, requiredFlow, maximumFlow }) => ({
      name,
      requiredFlow: requiredFlow ?? null,
      maximumFlow: maximumFlow ?? null,
      area: null,
    })),
    passesWater: true,
    outletsRise: true,
    hasKinks: false,
    stateAt: (flow) => ({
      flow,
      head: curve.staticHead + coefficient * flow ** 2,
      slope: 2 * coefficient * flow,
      suctionLoss: 0,
      outletFlows: shares.map((share) => share * flow),
      outletSlopes: shares,
      network: null,
    }),
    suctionLossAt: () => 0,
  };
}
