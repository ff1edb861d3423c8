/** Loops whose true friction, head and power are known, and what readings of them say. */
import {
  calibrateLoop,
  type LoopCalibration,
  stationFor,
} from '../../../models/calibration/calibrate-loop.ts';
import { rowCollector } from '../../../models/calibration/row-collector.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { Meter } from '../../../models/loop/meter.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { canister } from '../example-loops.ts';
import { fitted, modelled } from './synthetic.ts';

/** Meters without an error of their gain. */
export const EXACT: readonly Meter[] = (
  ['flow', 'outletFlow', 'head', 'power', 'suctionPressure', 'dischargePressure'] as const
).map((measure) => ({ measure, accuracy: 0 }));

/** What readings of a pump on a loop as entered say. */
export function calibrated(
  {
    loop,
    pump = canister,
    setting = 80,
    meters = [],
  }: { loop: Loop; pump?: Pump; setting?: number; meters?: readonly Meter[] },
  measured: readonly Reading[],
): LoopCalibration & { readonly used: number } {
  const installation = { loop: modelled(loop), pump: fitted(pump), count: 1 };
  const collector = rowCollector(stationFor(installation));
  for (const reading of measured) {
    if (collector.add(reading) !== null) throw new Error('too many rows');
  }
  const { rows, used } = collector.rows();
  return { ...expectValue(calibrateLoop({ installation, rows, meters, setting })), used };
}
