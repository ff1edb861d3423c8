/** Puts a calibration into sentences. */
import { PERCENT } from '../../../curves/percent.ts';
import type { LoopCalibration } from '../../../models/calibration/calibrate-loop.ts';
import type { SettledParameter } from '../../../models/calibration/helpful-readings.ts';
import type { Refusal } from '../../../models/calibration/misfits.ts';
import type { Gauge, Measure } from '../../../models/calibration/row-collector.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

const NAMES = {
  friction: 'Friction',
  head: 'The head of the pump',
  power: 'The power of the pump',
  frictionOverHead: 'Friction over head',
} as const satisfies Record<SettledParameter['name'], string>;

/** Digits of factors and of percentages. */
const DIGITS = { factor: 3, percent: 2 } as const;

const factor = (value: number): string => sayNumber(value, DIGITS.factor);
const percent = (share: number): string => `${sayNumber(Math.abs(PERCENT * share), DIGITS.percent)} %`;

const parameterWords = ({ name, value, interval }: SettledParameter): string =>
  `${NAMES[name]} is ${factor(value)} times the entered value (95 %: ${factor(interval.low)} to ${factor(interval.high)}).`;

const MEASURES = {
  flow: 'total flow',
  outletFlow: 'flow',
  head: 'head across the pump',
  power: 'electrical power',
} as const satisfies Record<Measure, string>;

function readingWords({ measure, setting, outlet, shut, zeroFlow }: Gauge): string {
  const of = outlet === null ? '' : ` of outlet "${outlet}"`;
  const valve = zeroFlow ? ' with a valve closed for a few seconds' : '';
  const outlets = shut.map((name) => `"${name}"`).join(', ');
  const closed = shut.length === 0 ? '' : ` with outlet${shut.length === 1 ? '' : 's'} ${outlets} closed`;
  return `${MEASURES[measure]}${of} at ${sayNumber(setting)} %${valve}${closed}`;
}

function marginWords({ smallestMargin }: LoopCalibration): string {
  if (smallestMargin === null || smallestMargin.margin === null) return '';
  const { outlet, margin, setting, uncertainty } = smallestMargin;
  const signed = (share: number) => `${share < 0 ? '-' : '+'}${percent(share)}`;
  const interval = uncertainty?.interval ?? null;
  const range = interval === null ? '' : ` (95 %: ${signed(interval.low)} to ${signed(interval.high)})`;
  return ` Outlet "${outlet}" has the smallest margin at ${sayNumber(setting)} %: ${signed(margin)}${range}.`;
}

function misfitWords({ misfits }: LoopCalibration): string {
  const [worst] = misfits;
  if (worst === undefined) return '';
  const count = misfits.length === 1 ? 'One reading does' : `${misfits.length} readings do`;
  const side = worst.residual < 0 ? '-' : '+';
  return ` ${count} not fit: ${readingWords(worst)}, ${side}${percent(worst.residual)}.`;
}

/** Why factors may not be applied. */
export function refusalWords(refusal: Refusal): string {
  switch (refusal.code) {
    case 'nothing-determined':
      return 'The readings determine no factor.';
    case 'ratio-too-uncertain':
      return `Friction over head is uncertain by ${percent(refusal.actual)} either way, more than ${percent(refusal.limit)}.`;
    case 'readings-scatter':
      return `Readings of the ${MEASURES[refusal.measure]} scatter by ${percent(refusal.actual)}, more than ${percent(refusal.limit)}.`;
    case 'readings-do-not-fit':
      return `${percent(refusal.actual)} of the readings of the ${MEASURES[refusal.measure]} do not fit, more than ${percent(refusal.limit)}.`;
  }
}

export function calibrationSentence(calibration: LoopCalibration, applied: boolean): string {
  const { parameters, nextReadings, refusal } = calibration;
  const [next] = nextReadings;
  const factors =
    parameters.length === 0
      ? 'The readings determine none of friction, head and power.'
      : parameters.map(parameterWords).join(' ');
  const refused =
    refusal === null || refusal.code === 'nothing-determined'
      ? ''
      : ` ${refusalWords(refusal)} The factors cannot be applied.`;
  const use = applied ? ' The factors were applied.' : '';
  const best = next === undefined ? '' : ` Next, read the ${readingWords(next)}.`;
  return `${factors}${misfitWords(calibration)}${refused}${marginWords(calibration)}${use}${best}`;
}
