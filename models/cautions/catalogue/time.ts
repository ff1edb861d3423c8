/** Cautions about phases, prices by time and running on a battery. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const TIME_CAUTIONS = {
  'phase-infeasible': {
    severity: 'danger',
    sentence:
      "No setting serves this phase: the highest setting inside the pump's own limits is told, and it does not give what is required.",
    source: 'requirements as entered',
  },
  'battery-as-stated': {
    severity: 'note',
    sentence:
      'The hours on a battery take its stated energy as what reaches the pump: age, cold and the inverter take their part.',
    source: COMMON_PRACTICE,
  },
  'settings-thinned': {
    severity: 'note',
    sentence:
      'The pump has more than 1001 settings: a volume was planned among some of them at even strides, and its cost and gap are those among these.',
    source: 'limit of the volume plan',
  },
  'time-mean-price': {
    severity: 'note',
    sentence:
      'Costs take the time-mean price of the tariff over the year: the hours of the day at which the pump runs are not known here; a schedule tells them.',
    source: 'tariff as entered',
  },
} as const satisfies Record<string, CautionRow>;
