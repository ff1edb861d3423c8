/** Names causes of a change in words, with what to do about each. */
import type { NamedCause } from '../../../models/condition/condition-report.ts';
import type { CauseName } from '../../../models/condition/signatures.ts';
import type { Gauge } from '../../../models/readings/measure.ts';
import type { Slip } from '../../../models/readings/slip.ts';

interface CauseWords {
  /** `a clogged intake` */
  readonly noun: string;
  /** `the intake is clogged` */
  readonly clause: string;
  readonly action: string;
}

const MEASURE_WORDS = {
  flow: 'flow',
  power: 'power',
  head: 'head',
  suctionPressure: 'suction pressure',
  dischargePressure: 'discharge pressure',
} as const;

/** `flow of outlet "far end"`. */
export const gaugeWords = ({ measure, outlet }: Pick<Gauge, 'measure' | 'outlet'>): string =>
  measure === 'outletFlow' ? `flow of outlet "${outlet}"` : MEASURE_WORDS[measure];

const SLIP_WORDS = {
  'gallons-and-litres': 'gallons and litres',
  'hours-and-minutes': 'hours and minutes',
  'cubic-metres-per-hour-and-litres-per-minute': 'm3/h and L/min',
  'watts-and-kilowatts': 'watts and kilowatts',
  'feet-and-metres': 'feet and metres',
  'psi-and-kilopascals': 'psi and kPa',
  'kilopascals-and-metres': 'kPa and metres of water',
} as const satisfies Record<Slip, string>;

/** `gallons and litres`. */
export const slipWords = (slip: Slip): string => SLIP_WORDS[slip];

const PLAIN: Readonly<
  Record<Exclude<CauseName, 'clogged-branch' | 'meter-drift' | 'unit-slip'>, CauseWords>
> = {
  'clogged-intake': {
    ...{ noun: 'a clogged intake', clause: 'the intake is clogged' },
    action: 'Clean the screen and the suction.',
  },
  'clogged-discharge': {
    ...{ noun: 'a clogged discharge', clause: 'the discharge is clogged' },
    action: 'Check the valves, nozzles and pipes behind the pump.',
  },
  'worn-pump': {
    ...{ noun: 'a worn pump', clause: 'the pump is worn' },
    action: 'Have the wet end of the pump serviced.',
  },
  'speed-low': {
    ...{ noun: 'a low speed', clause: 'the pump runs slower than its setting' },
    action: 'Check the controller and the supply of the pump.',
  },
  'draws-more': {
    ...{ noun: 'a pump that draws more', clause: 'the pump draws more power' },
    action: 'Check the impeller and the bearings.',
  },
  'less-resistance': {
    ...{ noun: 'less resistance', clause: 'the loop has less resistance' },
    action: 'Look for an opened valve or a leak.',
  },
  'pump-stopped': {
    ...{ noun: 'a stopped pump', clause: 'a pump has stopped' },
    action: 'Check the power supply, the controller and the impeller of each pump.',
  },
};

const quoted = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');

export function causeWords({ cause, gauge, outletNames, slip }: NamedCause): CauseWords {
  switch (cause) {
    case 'clogged-branch': {
      const branch = `branch of outlet${outletNames.length === 1 ? '' : 's'} ${quoted(outletNames)}`;
      return {
        ...{ noun: `a clogged ${branch}`, clause: `the ${branch} is clogged` },
        action: `Check the valves, nozzles and pipes in the ${branch}.`,
      };
    }
    case 'meter-drift': {
      const meter = gauge === null ? 'meter' : `meter of the ${gaugeWords(gauge)}`;
      return {
        ...{ noun: `a drift of the ${meter}`, clause: `the ${meter} has drifted` },
        action: `Check the ${meter}.`,
      };
    }
    case 'unit-slip': {
      const what = gauge === null ? 'a reading' : `the ${gaugeWords(gauge)}`;
      const units = slip === null ? 'units' : slipWords(slip);
      return {
        ...{ noun: `a mix-up of ${units} in ${what}`, clause: `${units} are mixed up in ${what}` },
        action: 'Correct the unit of the readings.',
      };
    }
    default:
      return PLAIN[cause];
  }
}

/** By its code alone. */
export const causeNoun = (cause: CauseName): string =>
  causeWords({
    ...{ cause, probability: 0, magnitude: null, interval: null, gauge: null, outletNames: [] },
    ...{ slip: null, factor: null, pumpsRunning: null },
  }).noun;
