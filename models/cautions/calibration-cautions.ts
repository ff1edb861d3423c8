/** Cautions about a calibration. */
import type { Calibration } from '../calibration/calibrate.ts';
import type { SettledParameter } from '../calibration/next-readings.ts';
import { type Caution, caution } from './catalogue.ts';

const FEW_READINGS = 10;
/** More friction, or less head, than entries are commonly off by: as clogging and wear show. */
const LIKE_FAULT = { friction: 1.1, head: 0.95 } as const;

/** More head than pumps exceed their curves by, more or less power than wear and fouling explain. */
const SUSPECT = { head: 1.1, power: { low: 0.75, high: 1.3 } } as const;

const isSuspect = ({ name, value }: SettledParameter): boolean =>
  (name === 'head' && value > SUSPECT.head) ||
  (name === 'power' && (value < SUSPECT.power.low || value > SUSPECT.power.high));

/** With the whole of its interval. */
const isLikeFault = ({ name, interval }: SettledParameter): boolean =>
  name === 'head' ? interval.high < LIKE_FAULT.head : name !== 'power' && interval.low > LIKE_FAULT.friction;

export function calibrationCautions({
  parameters,
  speeds,
  used,
  isThinned,
  nextReadings,
  drift,
  misfits,
  lacksGauges,
  isScattered,
}: Calibration): readonly Caution[] {
  const isRatio = parameters.some(({ name }) => name === 'frictionOverHead');
  return [
    ...(speeds?.differs === true ? [caution('speed-map-suspect')] : []),
    ...(nextReadings.some(({ zeroFlow }) => zeroFlow) ? [caution('shut-valve-briefly')] : []),
    ...(misfits.length === 0 ? [] : [caution('readings-misfit')]),
    ...(parameters.some(isSuspect) ? [caution('factor-suspect')] : []),
    ...(drift === null ? [] : [caution('readings-drift')]),
    ...(parameters.some(isLikeFault) ? [caution('fault-as-reference')] : []),
    ...(isRatio ? [caution('ratio-as-friction')] : []),
    ...(isScattered ? [caution('readings-scatter')] : []),
    ...(lacksGauges ? [caution('gauges-unlike')] : []),
    ...(isThinned ? [caution('readings-thinned')] : []),
    ...(used < FEW_READINGS ? [caution('few-readings')] : []),
    caution('meter-bias'),
  ];
}
