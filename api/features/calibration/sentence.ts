/** Puts a calibration into sentences. */
import { PERCENT } from '../../../curves/percent.ts';
import type { Calibration } from '../../../models/calibration/calibrate.ts';
import { SEPARATE } from '../../../models/calibration/identifiability.ts';
import type { NotIdentifiable } from '../../../models/calibration/identify.ts';
import type { Gauge } from '../../../models/calibration/measured-rows.ts';
import type { SettledParameter } from '../../../models/calibration/next-readings.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

const NAMES = {
  friction: 'Friction',
  head: 'The head of the pump',
  power: 'The power of the pump',
  frictionOverHead: 'Friction over head',
} as const satisfies Record<SettledParameter['name'], string>;

const APART = [
  'the head across the pump',
  'the head at a closed valve at the pump',
  'the flow with a known outlet closed',
];
const FLOWS = ['the total flow', 'the flow of an outlet'];
const MORE = ['more readings of the same, at other settings besides'];

export const helpfulReadings = ({ reason }: NotIdentifiable): readonly string[] => {
  switch (reason) {
    case 'no-power-readings':
      return ['the electrical power'];
    case 'no-flow-readings':
      return FLOWS;
    case 'ratio-alone':
    case 'not-distinct':
    case 'ill-conditioned':
      return APART;
    case 'too-uncertain':
      return [...APART, ...MORE];
    case 'implausible':
      return MORE;
  }
};

export function reasonWords(one: NotIdentifiable): string {
  switch (one.reason) {
    case 'no-power-readings':
      return 'No reading states a power.';
    case 'no-flow-readings':
      return 'No reading states a flow, without which heads determine another mixture of friction and head than their ratio.';
    case 'ratio-alone':
      return 'Flows on a loop without static head determine friction over head alone, whatever the settings.';
    case 'not-distinct':
      return 'The readings do not separate friction from head.';
    case 'ill-conditioned':
      return `The readings hardly tell friction and head apart: the condition number of the scaled Jacobian is ${sayNumber(one.conditionNumber)}, not under ${SEPARATE.conditionNumber}.`;
    case 'too-uncertain':
      return `Its standard error is ${sayNumber(one.standardError)}, not under ${SEPARATE.standardError}.`;
    case 'implausible':
      return 'Only a factor beyond all wear and clogging would fit: look at the units of the readings, and at the pipework and pump as entered.';
  }
}

const parameterWords = ({ name, value, interval }: SettledParameter): string =>
  `${NAMES[name]} is ${sayNumber(value)} times as entered (95 %: ${sayNumber(interval.low)} to ${sayNumber(interval.high)}).`;

function readingWords({ measure, setting, outlet, shut, zeroFlow }: Gauge): string {
  const what = {
    flow: 'the total flow',
    outletFlow: `the flow of ${outlet}`,
    head: 'the head across the pump',
    power: 'the electrical power',
  }[measure];
  const valve = zeroFlow ? ' with a valve at the pump closed for some seconds' : '';
  const closed = shut.length === 0 ? '' : ` with ${shut.join(', ')} closed`;
  return `${what} at setting ${sayNumber(setting)} %${valve}${closed}`;
}

function marginWords({ limiting }: Calibration): string {
  if (limiting === null || limiting.margin === null || limiting.doubt === null) return '';
  const { interval } = limiting.doubt;
  if (interval === null) return '';
  const [low, middle, high] = [interval.low, Math.abs(limiting.margin), interval.high].map((share) =>
    sayNumber(PERCENT * share),
  );
  const side = limiting.margin < 0 ? 'less' : 'more';
  return ` ${limiting.outlet} gets ${middle} % ${side} than it needs at setting ${sayNumber(limiting.setting)} % (${low} to ${high} %).`;
}

function misfitWords({ misfits }: Calibration): string {
  const [worst] = misfits;
  if (worst === undefined) return '';
  const side = worst.off < 0 ? 'below' : 'above';
  const others = misfits.length === 1 ? '' : ', and others besides';
  const words = readingWords(worst);
  return ` Not all fits together: ${words} is ${sayNumber(PERCENT * Math.abs(worst.off))} % ${side} what they give${others}.`;
}

export function calibrationSentence(calibration: Calibration, applied: boolean): string {
  const { parameters, nextReadings } = calibration;
  const [next] = nextReadings;
  const factors =
    parameters.length === 0
      ? 'The readings determine none of friction, head and power.'
      : parameters.map(parameterWords).join(' ');
  const use = applied ? ' The loop is computed with it from now on.' : '';
  const best = next === undefined ? '' : ` Most would be gained by reading ${readingWords(next)}.`;
  return `${factors}${misfitWords(calibration)}${marginWords(calibration)}${use}${best}`;
}
