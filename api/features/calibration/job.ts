/** The job of a calibration computes the factors that readings determine. */
import type { Result } from '../../../curves/result.ts';
import { type Calibration, calibrate } from '../../../models/calibration/calibrate.ts';
import type { MeasuredRows } from '../../../models/calibration/measured-rows.ts';
import type { Unsolved } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { loopJob } from '../../records/loop/loop-job.ts';

export interface CalibrationWork {
  /** As entered, like the loop. */
  readonly pump: PumpModel;
  readonly count: number;
  /** At which the limiting margin is given [%]. */
  readonly setting: number;
  readonly measured: MeasuredRows;
}

export const calibrationJob = loopJob<CalibrationWork, Result<Calibration, Unsolved>>({
  name: 'calibration',
  // A fit solves the loop hundreds of times.
  isLong: () => true,
  compute: (loop, { pump, count, setting, measured }) => calibrate({ loop, pump, count }, measured, setting),
});
