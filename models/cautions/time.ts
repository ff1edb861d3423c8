/** Gives the cautions about phases, prices by time and running on a battery. */
import { HOURS_PER_DAY } from '../calendar/time-factors.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const TIME = topic({
  'phase-infeasible': {
    severity: 'danger',
    sentence:
      'No setting is feasible. The setting given protects animals and pump; outlets can receive less than required.',
    source: 'requirements as entered',
  },
  'pump-stopped': {
    severity: 'danger',
    sentence:
      'The pump is stopped although it is set to run, and animals can be left without water. Check the pump and its supply.',
    source: 'latest reading; power and flow of a stopped pump: common practice',
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
      'Costs take the time-mean price of the tariff over the year: the hours of the day at which the pump runs are not known here; a schedule states them.',
    source: 'tariff as entered',
  },
});

/**
 * What a schedule rests on, and what it does not serve.
 *
 * @param facts infeasible, names of the phases in which no setting is feasible; stride [-], every how many settings one is a
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

/**
 * Whether a setpoint is feasible, and whether the pump follows it.
 *
 * @param facts phase, its name, null for a loop without a schedule; isStopped, whether the latest reading is of a
 *   stopped pump.
 */
export const setpointCautions = ({
  feasible,
  phase,
  isStopped,
}: {
  readonly feasible: boolean;
  readonly phase: string | null;
  readonly isStopped: boolean;
}): readonly CautionOf<typeof TIME>[] => [
  ...TIME.when(isStopped, 'pump-stopped'),
  ...TIME.when(!feasible, 'phase-infeasible', phase === null ? [] : [phase]),
];

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
