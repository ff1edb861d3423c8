/** Gathers the cautions that apply to one pump at one duty on a loop. */
import type { ExactDuty } from '../duty/duty-point.ts';
import type { CriteriaContext } from '../selection/criteria.ts';
import type { Caution } from './catalogue.ts';
import { extrapolationCautions, settingCautions } from './entered-range.ts';
import { flowLimitCautions, preferredRegionCautions } from './flow-region.ts';
import { overflowCautions } from './installation.ts';
import { peopleCautions, screenCautions, submergenceCautions } from './intake.ts';
import { reachCautions } from './jets.ts';
import { outletCautions } from './outlets.ts';
import { parallelCautions } from './parallel-pumps.ts';
import { pipeworkCautions } from './pipework.ts';
import { fitCautions } from './pump-fit.ts';
import { startCautions } from './starting.ts';
import { suctionCautions } from './suction.ts';

/**
 * Cautions about pump, setting, suction and screen, then about the flows in pipes and outlets.
 * @param reachVelocity [m/s] that the reach of every outlet was asked to; null: the reaches that outlets state.
 */
export function dutyCautions(
  context: CriteriaContext,
  duty: ExactDuty,
  reachVelocity: number | null = null,
): readonly Caution[] {
  const { loop, limits } = context;
  return [
    ...startCautions(context, duty),
    ...pumpCautions(context, duty),
    ...parallelCautions(loop, duty),
    ...suctionCautions(context, duty),
    ...screenCautions(loop.entered, limits, duty.flow),
    ...outletCautions(loop, duty.outletFlows),
    ...pipeworkCautions(loop, limits, duty),
    ...(duty.state === null ? [] : submergenceCautions(loop, duty.flow)),
    ...reachCautions(loop, duty.outletFlows, reachVelocity),
    ...peopleCautions(context, duty),
    ...overflowCautions(loop.entered, duty.flow),
  ];
}

function pumpCautions({ pump, loop }: CriteriaContext, duty: ExactDuty): readonly Caution[] {
  const flowAtFullSpeed = duty.flow / (duty.count * duty.speedRatio);
  return [
    ...(duty.deadHead ? [] : preferredRegionCautions(pump, flowAtFullSpeed, loop.water)),
    ...extrapolationCautions(pump, flowAtFullSpeed),
    ...flowLimitCautions(pump, flowAtFullSpeed),
    ...settingCautions(pump, duty),
    ...fitCautions(pump),
  ];
}
