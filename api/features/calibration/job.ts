/** The whole computation behind a calibration: from plain data to plain data. */
import type { Result } from '../../../curves/result.ts';
import { type Calibration, calibrate } from '../../../models/calibration/calibrate.ts';
import type { MeasuredRows } from '../../../models/calibration/measured-rows.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { Unsolved } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';

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
  loop: CompiledLoop,
  { pump, count, setting, measured }: CalibrationWork,
): CalibrationFigures => calibrate({ loop, pump, count }, measured, setting);
