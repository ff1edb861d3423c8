/** Cautions about a calibration that was made with other pumps than those it is now used for. */
import { type AppliedCalibration, isAbout } from '../calibration/applied.ts';
import type { PumpFit } from '../pump/pump-model.ts';
import { type Caution, caution } from './catalogue.ts';

/** `pumps` as they are entered; those without an id are never those of a calibration. */
export function borrowedCalibration(
  calibration: AppliedCalibration | null | undefined,
  pumps: readonly { readonly id: string | null; readonly fit: PumpFit }[],
): readonly Caution[] {
  if (calibration === null || calibration === undefined) return [];
  const isAged = pumps.some((pump) => pump.id === calibration.pump.id && !isAbout(calibration, pump));
  const isRatio = calibration.parameters.some(({ name }) => name === 'frictionOverHead');
  const isOthers = isRatio && pumps.some(({ id }) => id !== calibration.pump.id);
  return [
    ...(isAged ? [caution('calibration-aged')] : []),
    ...(isOthers ? [caution('calibration-of-another-pump')] : []),
  ];
}
