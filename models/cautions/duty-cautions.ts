/** Gathers the cautions that apply to one pump at one duty on a loop. */
import type { ExactDuty } from '../duty/duty-point.ts';
import type { CriteriaContext } from '../selection/criteria.ts';
import { boreChangeCautions } from './bore-changes.ts';
import type { Caution } from './catalogue.ts';
import { dryOutletCautions } from './dry-outlets.ts';
import { efficiencyCautions } from './efficiency.ts';
import { extrapolationCautions, powerRangeCautions, settingCautions } from './entered-range.ts';
import { flowLimitCautions, lowFlowCautions, preferredRegionCautions } from './flow-region.ts';
import { overflowCautions } from './installation.ts';
import { peopleCautions, screenCautions, submergenceCautions } from './intake.ts';
import { reachCautions } from './jets.ts';
import { linePressureCautions } from './line-pressure.ts';
import { motorCautions } from './motor.ts';
import { outletCautions } from './outlets.ts';
import { parallelCautions } from './parallel-pumps.ts';
import { pipeworkCautions } from './pipework.ts';
import { fitCautions } from './pump-fit.ts';
import { startCautions } from './starting.ts';
import { suctionCautions } from './suction.ts';
import { valveCautions, type YearAtDuty } from './valves.ts';

/**
 * Cautions about pump, setting, suction and screen, then about the flows in pipes and outlets.
 * @param asked reachVelocity [m/s] that the reach of every outlet was asked to, undefined or null: the reaches that outlets
 *   state; year, energy [kWh] and cost [money] of a year at the duty, undefined: not known.
 */
export function dutyCautions(
  context: CriteriaContext,
  duty: ExactDuty,
  {
    reachVelocity = null,
    year = null,
  }: { readonly reachVelocity?: number | null; readonly year?: YearAtDuty | null } = {},
): readonly Caution[] {
  const { loop, limits, elevation } = context;
  return [
    ...startCautions(context, duty),
    ...pumpCautions(context, duty),
    ...parallelCautions(loop, duty),
    ...suctionCautions(context, duty),
    ...screenCautions(loop.entered, limits, duty.flow),
    ...outletCautions(loop, duty.outletFlows),
    ...dryOutletCautions(loop, duty),
    ...pipeworkCautions(loop, limits, duty),
    ...boreChangeCautions(loop, duty),
    ...valveCautions(loop, duty, { elevation, year }),
    ...linePressureCautions(loop, duty, elevation),
    ...(duty.state === null ? [] : submergenceCautions(loop, duty.flow)),
    ...reachCautions(loop, duty.outletFlows, reachVelocity),
    ...peopleCautions(context, duty),
    ...overflowCautions(loop.entered, duty.flow),
  ];
}

function pumpCautions({ pump, loop }: CriteriaContext, duty: ExactDuty): readonly Caution[] {
  const { speedRatio } = duty;
  const flowAtFullSpeed = duty.flow / (duty.count * speedRatio);
  return [
    ...motorCautions(pump.entered, duty),
    ...efficiencyCautions(duty),
    ...(duty.deadHead ? [] : preferredRegionCautions(pump, flowAtFullSpeed, loop.water)),
    ...lowFlowCautions(pump, flowAtFullSpeed, loop.water),
    ...extrapolationCautions(pump, flowAtFullSpeed),
    ...powerRangeCautions(pump, { speedRatio, flowAtFullSpeed }),
    ...flowLimitCautions(pump, flowAtFullSpeed),
    ...settingCautions(pump, duty),
    ...fitCautions(pump),
  ];
}
