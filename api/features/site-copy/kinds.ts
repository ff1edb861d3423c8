/** Lists every kind of record of a site, which each new kind joins. */
import type { Kysely } from 'kysely';
import { BASELINES } from '../../records/baseline/export.ts';
import { COMPLETIONS } from '../../records/completion/export.ts';
import { loopRecord, loopWrites } from '../../records/loop/kind.ts';
import { pumpRecord, pumpWrites } from '../../records/pump/kind.ts';
import { READINGS } from '../../records/reading/export.ts';
import { scheduleRecord, scheduleStore } from '../../records/schedule/kind.ts';
import { tariffRecord, tariffWrites } from '../../records/tariff/kind.ts';
import { TASKS } from '../../records/task/kind.ts';
import {
  countedIn,
  type KindOfRecord,
  later,
  RECORDS_OF_A_KIND_MAX,
  type RecordTable,
  writtenTo,
} from '../../store/exported-kind.ts';
import { keptRecord } from '../../store/immutable-documents.ts';
import type { Tables } from '../../store/tables.ts';
import { CALIBRATIONS } from '../calibration/export.ts';
import type { StoredComparison } from '../comparison/contract.ts';
import { comparisonStore } from '../comparison/kind.ts';
import type { StoredUpgradePlan } from '../upgrade-plan/contract.ts';
import { upgradePlanStore } from '../upgrade-plan/kind.ts';
import type { KindsOfRecords, RecordKind } from './contract.ts';

const common = (table: RecordTable) => ({ most: RECORDS_OF_A_KIND_MAX, count: countedIn(table) });

const tariffRows = (db: Kysely<Tables>, siteId: string) =>
  db.selectFrom('tariff').selectAll().where('site_id', '=', siteId).orderBy('created_at').orderBy('id');

const pumpRows = (db: Kysely<Tables>, siteId: string) =>
  db.selectFrom('pump').selectAll().where('site_id', '=', siteId).orderBy('created_at').orderBy('id');

const loopRows = (db: Kysely<Tables>, siteId: string) =>
  db.selectFrom('loop').selectAll().where('site_id', '=', siteId).orderBy('created_at').orderBy('id');

const scheduleRows = (db: Kysely<Tables>, siteId: string) =>
  db.selectFrom('schedule').selectAll().where('site_id', '=', siteId).orderBy('created_at').orderBy('id');

const comparisonRows = (db: Kysely<Tables>, siteId: string) =>
  db.selectFrom('comparison').selectAll().where('site_id', '=', siteId).orderBy('created_at').orderBy('id');

const planRows = (db: Kysely<Tables>, siteId: string) =>
  db.selectFrom('upgrade_plan').selectAll().where('site_id', '=', siteId).orderBy('created_at').orderBy('id');

export const RECORD_KINDS: { readonly [Kind in RecordKind]: KindOfRecord<KindsOfRecords[Kind]> } = {
  tariffs: {
    ...common('tariff'),
    read: async (db, siteId) => later(await tariffRows(db, siteId).execute(), tariffRecord),
    write: writtenTo('tariff', ({ db, record: { document }, ...where }) =>
      tariffWrites(db).insertTariff({ ...where, document }),
    ),
  },
  pumps: {
    ...common('pump'),
    read: async (db, siteId) => later(await pumpRows(db, siteId).execute(), pumpRecord),
    write: writtenTo('pump', ({ db, record: { document, fit }, ...where }) =>
      pumpWrites(db).insertPump({ ...where, document, fit }),
    ),
  },
  loops: {
    ...common('loop'),
    read: async (db, siteId) => later(await loopRows(db, siteId).execute(), loopRecord),
    write: writtenTo('loop', ({ db, record: { document }, ...where }) =>
      loopWrites(db).insertLoop({ ...where, document }),
    ),
  },
  schedules: {
    ...common('schedule'),
    read: async (db, siteId) => later(await scheduleRows(db, siteId).execute(), scheduleRecord),
    write: writtenTo('schedule', ({ db, record: { document }, ...where }) =>
      scheduleStore(db).putSchedule({ ...where, document, expectedVersion: 'none' }),
    ),
  },
  comparisons: {
    ...common('comparison'),
    read: async (db, siteId) =>
      later(await comparisonRows(db, siteId).execute(), (row) =>
        keptRecord<StoredComparison>(row, 'comparison'),
      ),
    write: writtenTo('comparison', ({ db, record: { document }, ...where }) =>
      comparisonStore(db).insertComparison({ ...where, document }),
    ),
  },
  upgradePlans: {
    ...common('upgrade_plan'),
    read: async (db, siteId) =>
      later(await planRows(db, siteId).execute(), (row) =>
        keptRecord<StoredUpgradePlan>(row, 'upgrade_plan'),
      ),
    write: writtenTo('upgrade_plan', ({ db, record: { document }, ...where }) =>
      upgradePlanStore(db).insertUpgradePlan({ ...where, document }),
    ),
  },
  maintenanceTasks: { ...common('maintenance_task'), ...TASKS },
  completions: { ...common('maintenance_completion'), ...COMPLETIONS },
  calibrations: CALIBRATIONS,
  baselines: BASELINES,
  readings: READINGS,
};
