/** Says whether what is computed on a loop follows from what was entered, or from a calibration besides. */
import type { AppliedCalibration } from '../../../models/calibration/applied.ts';

export type DataBasis = 'entered' | 'calibrated';

export const dataBasisOf = ({
  calibration,
}: {
  readonly calibration?: AppliedCalibration | null | undefined;
}): DataBasis => (calibration === null || calibration === undefined ? 'entered' : 'calibrated');
