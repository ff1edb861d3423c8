/** The job of a calibration computes the factors that readings determine. */
import type { Result } from '../../../curves/result.ts';
import { calibrateLoop, type LoopCalibration } from '../../../models/calibration/calibrate-loop.ts';
import type { Row } from '../../../models/calibration/row-collector.ts';
import type { Meter } from '../../../models/loop/meter.ts';
import type { Unsolved } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { loopJob } from '../../records/loop/loop-job.ts';

export interface CalibrationWork {
  /** As entered, like the loop. */
  readonly pump: PumpModel;
  readonly count: number;
  /** At which the smallest margin is given [%]. */
  readonly setting: number;
  readonly rows: readonly Row[];
  readonly meters: readonly Meter[];
}

export const calibrationJob = loopJob<CalibrationWork, Result<LoopCalibration, Unsolved>>({
  name: 'calibration',
  // A fit solves the loop hundreds of times.
  isLong: () => true,
  compute: (loop, { pump, count, ...question }) =>
    calibrateLoop({ ...question, installation: { loop, pump, count } }),
});
