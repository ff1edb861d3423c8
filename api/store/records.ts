/** The records that a site holds, each a document with its version and times. */
import type { AppliedCalibration } from '../../models/calibration/applied.ts';
import type { Loop } from '../../models/loop.ts';
import type { Pump } from '../../models/pump.ts';
import type { PumpFit } from '../../models/pump-model.ts';
import type { Schedule } from '../../models/schedule/schedule.ts';
import type { Tariff } from '../../models/tariff/tariff.ts';
import type { StoredRecord } from './stored.ts';

/** A facility: `elevation` in m, `price` in money per kWh, `labourRate` in money per hour. */
export interface Site {
  readonly name: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly elevation: number;
  readonly price: number | null;
  readonly labourRate: number | null;
  /** Id of the tariff that prices go by where nothing else is stated. */
  readonly tariff: string | null;
}

export type SiteRecord = StoredRecord<Site>;
/** The document is as entered; what is computed on the loop rests on its calibration, where it has one. */
export interface LoopRecord extends StoredRecord<Loop> {
  readonly calibration: AppliedCalibration | null;
}
export type TariffRecord = StoredRecord<Tariff>;
/** Its id is that of its loop. */
export type ScheduleRecord = StoredRecord<Schedule>;
/** The fit is read back bit for bit as it was written. */
export interface PumpRecord extends StoredRecord<Pump> {
  readonly fit: PumpFit;
}
