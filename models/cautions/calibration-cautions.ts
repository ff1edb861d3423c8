/** Cautions about a calibration. */
import type { Calibration } from '../calibration/calibrate.ts';
import { type Caution, caution } from './catalogue.ts';

const FEW_READINGS = 10;

export function calibrationCautions({
  parameters,
  speeds,
  used,
  isThinned,
  nextReadings,
}: Calibration): readonly Caution[] {
  const isRatio = parameters.some(({ name }) => name === 'frictionOverHead');
  return [
    ...(speeds?.differs === true ? [caution('speed-map-suspect')] : []),
    ...(nextReadings.some(({ zeroFlow }) => zeroFlow) ? [caution('shut-valve-briefly')] : []),
    ...(isRatio ? [caution('ratio-as-friction')] : []),
    ...(isThinned ? [caution('readings-thinned')] : []),
    ...(used < FEW_READINGS ? [caution('few-readings')] : []),
    caution('meter-bias'),
  ];
}
