/** The system of a loop known by points of its system curve, its outlets at fixed shares of the flow. */
import type { SystemCurve } from '../../curves/system-curve.ts';
import type { ShareOutlet } from '../loop/loop.ts';
import type { System } from './system.ts';

/** Head = staticHead + coefficient x frictionMultiplier x Q^2; suction losses are part of the curve and not told apart. */
export function curveSystem(
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
