/** Rows read back as records. */
import type { Loop } from '../../models/loop.ts';
import type { Pump } from '../../models/pump.ts';
import type { PumpFit } from '../../models/pump-model.ts';
import type { Schedule } from '../../models/schedule/schedule.ts';
import type { Tariff } from '../../models/tariff/tariff.ts';
import { calibrationOf } from './calibration-text.ts';
import { checkDigest } from './json-text.ts';
import { parsedOnce } from './parsed-once.ts';
import type { LoopRow, PumpRow, RowCommon, ScheduleRow, TariffRow } from './schema.ts';
import type { LoopRecord, PumpRecord, ScheduleRecord, Site, SiteRecord, TariffRecord } from './store.ts';

const common = (row: RowCommon) => ({
  id: row.id,
  version: row.version,
  createdAt: row.created_at,
  updatedAt: row.updated_at,
  name: row.name,
});

// The digest proves that a text is the one made from a value of the type, so parsing gives that type back.

export const siteRecord = parsedOnce((row: RowCommon): SiteRecord => {
  checkDigest(row, 'site', [row.document]);
  const document: Site = JSON.parse(row.document);
  return { ...common(row), document };
});

export const pumpRecord = parsedOnce((row: PumpRow): PumpRecord => {
  checkDigest(row, 'pump', [row.document, row.fit]);
  const document: Pump = JSON.parse(row.document);
  const fit: PumpFit = JSON.parse(row.fit);
  return { ...common(row), document, fit };
});

export const loopRecord = parsedOnce((row: LoopRow): LoopRecord => {
  checkDigest(row, 'loop', [row.document]);
  const document: Loop = JSON.parse(row.document);
  const { calibration: text, calibration_digest } = row;
  const calibration = text === null ? null : calibrationOf({ calibration: text, calibration_digest }, row.id);
  return { ...common(row), document, calibration };
});

export function tariffRecord(row: TariffRow): TariffRecord {
  checkDigest(row, 'tariff', [row.document]);
  const document: Tariff = JSON.parse(row.document);
  return { ...common(row), document };
}

export function scheduleRecord(row: ScheduleRow): ScheduleRecord {
  checkDigest(row, 'schedule', [row.document]);
  const document: Schedule = JSON.parse(row.document);
  return { ...common(row), document };
}
