/** Gives the cautions about what a pump draws through: the pressure before it, and its height. */
import type { DutyFigures } from '../duty/duty-point.ts';
import { type CriteriaContext, npshFigures } from '../selection/criteria.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const SUCTION = topic({
  'suction-boils': {
    severity: 'danger',
    sentence:
      'The lift and the losses before the pump leave no pressure above that at which the water boils: no pump can draw it. Set the pump lower, or widen and shorten its suction.',
    source: 'NPSH available of 0 or below',
  },
  'submerged-above-surface': {
    severity: 'warning',
    sentence:
      'The pump is entered as submerged, but its centreline above the surface that it draws from: one of the two is wrong.',
    source: 'pump and loop as entered',
  },
  cavitation: {
    severity: 'danger',
    sentence: 'NPSH available is below NPSH required: the pump will cavitate.',
    source: 'definition of NPSH required',
  },
  'npsh-margin': {
    severity: 'warning',
    sentence: 'NPSH available is less than 1.3 times NPSH required.',
    source: 'margin ratio 1.3 as in Crane TP-410 (2009) Example 7-32; ANSI/HI 9.6.1 from memory',
  },
  'npsh-not-checked': {
    severity: 'note',
    sentence: 'The pump has no NPSH points: cavitation was not checked.',
    source: COMMON_PRACTICE,
  },
});

/** NPSH available over required below which a margin is missing. */
const NPSH_MARGIN = 1.3;

/** Judges the height of the pump, then the pressure before it at a duty. */
export function suctionCautions(
  context: CriteriaContext,
  duty: DutyFigures,
): readonly CautionOf<typeof SUCTION>[] {
  const { loop, pump } = context;
  const isAbove = pump.entered.mounting === 'submerged' && loop.entered.pumpElevation > 0;
  return [...SUCTION.when(isAbove, 'submerged-above-surface'), ...pressureCautions(context, duty)];
}

/** That water boils on its way is found without any points of the pump. */
function pressureCautions(context: CriteriaContext, duty: DutyFigures): readonly CautionOf<typeof SUCTION>[] {
  const { available, required } = npshFigures(context)(duty);
  if (required === null) {
    const judged = context.limits.npsh
      ? ['what was asked for is judged no further than that the water does not boil before the pump']
      : [];
    return [...SUCTION.when(available <= 0, 'suction-boils'), SUCTION.give('npsh-not-checked', judged)];
  }
  if (available <= 0) return [SUCTION.give('suction-boils')];
  if (available < required) return [SUCTION.give('cavitation')];
  return SUCTION.when(available < NPSH_MARGIN * required, 'npsh-margin');
}
