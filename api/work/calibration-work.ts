/** The whole computation behind a calibration: from plain data to plain data. */
import type { Result } from '../../curves/result.ts';
import { type Calibration, calibrate } from '../../models/calibration/calibrate.ts';
import type { MeasuredRows } from '../../models/calibration/measured.ts';
import type { LoopModel } from '../../models/loop-model.ts';
import type { PumpModel } from '../../models/pump-model.ts';
import type { Unsolved } from '../../models/solve-failure.ts';

export interface CalibrationWork {
  /** As entered, like the loop. */
  readonly pump: PumpModel;
  readonly count: number;
  /** Where the limiting margin is told [%]. */
  readonly setting: number;
  readonly measured: MeasuredRows;
}

export type CalibrationFigures = Result<Calibration, Unsolved>;

export const computeCalibration = (
  loop: LoopModel,
  { pump, count, setting, measured }: CalibrationWork,
): CalibrationFigures => calibrate({ loop, pump, count }, measured, setting);
