/** The cautions about what a pump draws through: the pressure before it, and where it stands. */
import type { DutyFigures } from '../duty/duty-point.ts';
import { type ConditionContext, npshFigures } from '../selection/criteria.ts';
import { type Caution, caution } from './catalogue.ts';

const NPSH_MARGIN = 1.3;

export function suctionCautions(context: ConditionContext, duty: DutyFigures): readonly Caution[] {
  return [...mountingCautions(context), ...pressureCautions(context, duty)];
}

function mountingCautions({ loop: { loop }, pump: { pump } }: ConditionContext): readonly Caution[] {
  return pump.mounting === 'submerged' && loop.pumpElevation > 0 ? [caution('submerged-above-surface')] : [];
}

/** Water that boils on its way needs no points of the pump to be told. */
function pressureCautions(context: ConditionContext, duty: DutyFigures): readonly Caution[] {
  const { available, required } = npshFigures(context)(duty);
  if (required === null) {
    const judged = context.limits.npsh
      ? ['what was asked for is judged no further than that the water does not boil before the pump']
      : [];
    const notChecked = caution('npsh-not-checked', judged);
    return available > 0 ? [notChecked] : [caution('suction-boils'), notChecked];
  }
  if (available <= 0) return [caution('suction-boils')];
  if (available < required) return [caution('cavitation')];
  return available < NPSH_MARGIN * required ? [caution('npsh-margin')] : [];
}
