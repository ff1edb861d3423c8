/** Calibrations of loops: applied, undone, kept. */
import type { AppliedCalibration } from '../../../models/calibration/applied.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { ExpectedVersion, Missing, Stale } from '../../store/versions.ts';

/** One that was applied once; `undoneAt`: null while it has not been undone. Times in ms. */
export interface CalibrationRecord {
  readonly place: number;
  readonly appliedAt: number;
  readonly undoneAt: number | null;
  readonly calibration: AppliedCalibration;
}

/** The id is that of the loop, and so is the version. */
export interface CalibrationChange {
  readonly id: string;
  readonly now: number;
  readonly expectedVersion: ExpectedVersion;
}

export interface NewCalibration extends CalibrationChange {
  readonly calibration: AppliedCalibration;
}

export const CALIBRATIONS_READ_MAX = 200;

export interface CalibrationOperations {
  /** The loop moves on by a version. Its document stays as entered. */
  apply(
    change: NewCalibration,
  ): Promise<{ readonly outcome: 'applied'; readonly loop: LoopRecord } | Stale | Missing>;
  /** Back to the one applied before, where it is about the loop as it is now; without one, to the loop as entered. */
  undo(
    change: CalibrationChange,
  ): Promise<
    | { readonly outcome: 'undone'; readonly loop: LoopRecord }
    | { readonly outcome: 'no-calibration' }
    | Stale
    | Missing
  >;
  /** Every one that was applied to a loop, the latest first, at most `CALIBRATIONS_READ_MAX`. */
  list(loop: string): Promise<readonly CalibrationRecord[]>;
}

/** One that was applied to a loop; `of` tells what of the loop it was about, `inUse` whether the loop goes by it. */

export interface CopiedCalibration {
  readonly loop: string;
  readonly place: number;
  readonly appliedAt: number;
  readonly undoneAt: number | null;
  readonly of: string;
  readonly inUse: boolean;
  readonly calibration: AppliedCalibration;
}
