/** Cautions about a calibration. */
import type { Calibration } from '../calibration/calibrate.ts';
import type { SettledParameter } from '../calibration/next-readings.ts';
import { type Caution, caution } from './catalogue.ts';

const FEW_READINGS = 10;
/** More friction, or less head, than entries are commonly off by: as clogging and wear show. */
const LIKE_FAULT = { friction: 1.1, head: 0.95 } as const;

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
}: Calibration): readonly Caution[] {
  const isRatio = parameters.some(({ name }) => name === 'frictionOverHead');
  return [
    ...(speeds?.differs === true ? [caution('speed-map-suspect')] : []),
    ...(nextReadings.some(({ zeroFlow }) => zeroFlow) ? [caution('shut-valve-briefly')] : []),
    ...(drift === null ? [] : [caution('readings-drift')]),
    ...(parameters.some(isLikeFault) ? [caution('fault-as-reference')] : []),
    ...(isRatio ? [caution('ratio-as-friction')] : []),
    ...(isThinned ? [caution('readings-thinned')] : []),
    ...(used < FEW_READINGS ? [caution('few-readings')] : []),
    caution('meter-bias'),
  ];
}
