/** Gives the cautions about phases, prices by time and running on a battery. */
import { HOURS_PER_DAY } from '../calendar/time-factors.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const TIME = topic({
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
});

/**
 * What a schedule rests on, and what it does not serve.
 *
 * @param facts infeasible, names of the phases that no setting serves; stride [-], every how many settings one is a
 *   choice for a volume.
 */
export function scheduleCautions({
  infeasible,
  hasBattery,
  hasVolume,
  stride,
}: {
  readonly infeasible: readonly string[];
  readonly hasBattery: boolean;
  readonly hasVolume: boolean;
  readonly stride: number;
}): readonly CautionOf<typeof TIME>[] {
  return [
    ...TIME.when(infeasible.length > 0, 'phase-infeasible', infeasible),
    ...TIME.when(hasBattery, 'battery-as-stated'),
    ...TIME.when(hasVolume && stride > 1, 'settings-thinned', [`every ${stride}th setting`]),
  ];
}

/** Whether a setpoint serves its phase; `phase` is its name, null for a loop without a schedule. */
export const setpointCautions = ({
  feasible,
  phase,
}: {
  readonly feasible: boolean;
  readonly phase: string | null;
}): readonly CautionOf<typeof TIME>[] =>
  TIME.when(!feasible, 'phase-infeasible', phase === null ? [] : [phase]);

/**
 * Whether costs rest on a mean price: round the clock that is exact; with fewer hours it replaces hours that
 * were not stated.
 *
 * @param of tariff, the name of the tariff that the price is of, null where the price was stated; hoursPerDay [h]
 *   0..24.
 */
export const meanPriceCautions = ({
  tariff,
  hoursPerDay,
}: {
  readonly tariff: string | null;
  readonly hoursPerDay: number;
}): readonly CautionOf<typeof TIME>[] =>
  tariff === null ? [] : TIME.when(hoursPerDay !== HOURS_PER_DAY, 'time-mean-price', [tariff]);
