/** Gives the cautions about what a pump draws through: the pressure before it, and its height. */
import type { DutyFigures } from '../duty/duty-point.ts';
import { npshEndPassed } from '../duty/npsh.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
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
  priming: {
    severity: 'warning',
    sentence:
      'The pump stands above the water, and no foot valve or check valve holds its suction full: it does not start unless it is primed. Add a foot valve, or set the pump below the surface.',
    source: COMMON_PRACTICE,
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
  'npsh-extrapolated': {
    severity: 'note',
    sentence:
      'The duty lies beyond the largest flow of the NPSH points: NPSH required is taken to rise with the square of the flow there.',
    source: `${COMMON_PRACTICE}; not looked up`,
  },
  'npsh-not-checked': {
    severity: 'note',
    sentence: 'The pump has no NPSH points: cavitation was not checked.',
    source: COMMON_PRACTICE,
  },
});

/** NPSH available over required below which a margin is missing. */
const NPSH_MARGIN = 1.3;

type SuctionCaution = CautionOf<typeof SUCTION>;

/** Judges the height of the pump, then the pressure before it at a duty. */
export function suctionCautions(context: CriteriaContext, duty: DutyFigures): readonly SuctionCaution[] {
  const { pumpElevation } = context.loop.entered;
  const isSubmerged = context.pump.entered.mounting === 'submerged';
  const isAbove = pumpElevation > 0;
  const height = {
    pointer: '/pumpElevation',
    value: pumpElevation,
    limit: 0,
    quantity: 'elevation',
  } as const;
  return [
    ...SUCTION.when(isSubmerged && isAbove, 'submerged-above-surface', [], height),
    ...SUCTION.when(!isSubmerged && isAbove && runsEmpty(context.loop), 'priming', [], height),
    ...pressureCautions(context, duty),
    ...pointsCautions(context, duty),
  ];
}

/** Whether nothing holds the water in the suction while the pump is stopped; that of a system curve is not known. */
const runsEmpty = ({ network }: CompiledLoop): boolean =>
  network !== null && !network.suction.some(({ role }) => role === 'check-valve');

/** That water boils on its way is found without any points of the pump. */
function pressureCautions(context: CriteriaContext, duty: DutyFigures): readonly SuctionCaution[] {
  const { available, required } = npshFigures(context)(duty);
  const head = { value: available, quantity: 'head' } as const;
  if (available <= 0) return [SUCTION.give('suction-boils', [], { ...head, limit: 0 })];
  if (required === null) return [];
  if (available < required) return [SUCTION.give('cavitation', [], { ...head, limit: required })];
  const ratio = { value: available / required, limit: NPSH_MARGIN };
  return SUCTION.when(available < NPSH_MARGIN * required, 'npsh-margin', [], ratio);
}

/** Whether the points of the pump say what it requires, and reach the flow of its duty. */
function pointsCautions(
  { pump: { entered: pump }, limits }: CriteriaContext,
  { flow, count, speedRatio }: DutyFigures,
): readonly SuctionCaution[] {
  const pointer = '/npshPoints';
  const { npshPoints } = pump;
  if (npshPoints === undefined) {
    const judged = limits.enforceNpsh
      ? ['what was asked for is judged no further than that the water does not boil before the pump']
      : [];
    return [SUCTION.give('npsh-not-checked', judged, { pointer })];
  }
  const value = flow / (count * speedRatio);
  const limit = npshEndPassed(npshPoints, value);
  if (limit === null) return [];
  return [SUCTION.give('npsh-extrapolated', [], { pointer, value, limit, quantity: 'flow' })];
}
