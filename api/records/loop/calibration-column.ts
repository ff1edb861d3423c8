/** A calibration as columns of a row: its text, the digest of the text, and what of the loop it is about. */
import type { AppliedCalibration } from '../../../models/calibration/applied.ts';
import { hydraulicsOf } from '../../../models/loop/hydraulics.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';

export interface CalibrationColumns {
  readonly calibration: string;
  readonly calibration_digest: string;
  readonly calibration_of: string;
}

/** Distinguishes loops by what decides their flows. */
export const hydraulicsDigest = (loop: Loop): string => digestOf([jsonText(hydraulicsOf(loop))]);

export function calibrationColumns(calibration: AppliedCalibration, loop: Loop): CalibrationColumns {
  const text = jsonText(calibration);
  return {
    calibration: text,
    calibration_digest: digestOf([text]),
    calibration_of: hydraulicsDigest(loop),
  };
}

export const NO_CALIBRATION = { calibration: null, calibration_digest: null, calibration_of: null } as const;

/** The digest proves that the text is the one made from a calibration, so parsing gives one back. */
export function calibrationOf(
  { calibration, calibration_digest: digest }: { calibration: string; calibration_digest: string | null },
  id: string,
): AppliedCalibration {
  checkDigest({ id, digest: digest ?? '' }, 'calibration of loop', [calibration]);
  const parsed: AppliedCalibration = JSON.parse(calibration);
  return parsed;
}
