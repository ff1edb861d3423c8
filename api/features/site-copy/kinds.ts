/** Lists every kind of record of a site, which each new kind joins. */
import type { Kysely } from 'kysely';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import { EXPORTED_BASELINES } from '../../records/baseline/export.ts';
import { EXPORTED_COMPLETIONS } from '../../records/completion/export.ts';
import { LOOPS, loopRecord } from '../../records/loop/kind.ts';
import { PUMPS, pumpRecord } from '../../records/pump/kind.ts';
import { EXPORTED_READINGS } from '../../records/reading/export.ts';
import { SCHEDULES, scheduleRecord } from '../../records/schedule/kind.ts';
import { TARIFFS } from '../../records/tariff/kind.ts';
import { EXPORTED_TASKS } from '../../records/task/export.ts';
import { documentRecord } from '../../store/document-table.ts';
import {
  countedIn,
  type KindOfRecord,
  later,
  RECORDS_OF_A_KIND_MAX,
  writtenTo,
} from '../../store/exported-kind.ts';
import type { RecordTable, Tables } from '../../store/tables.ts';
import { EXPORTED_CALIBRATIONS } from '../calibration/export.ts';
import type { StoredComparison } from '../comparison/contract.ts';
import { COMPARISONS } from '../comparison/kind.ts';
import type { StoredUpgradePlan } from '../upgrade-plan/contract.ts';
import { UPGRADE_PLANS } from '../upgrade-plan/kind.ts';
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
    read: async (db, siteId) =>
      later(await tariffRows(db, siteId).execute(), (row) => documentRecord<Tariff>(row, 'tariff')),
    write: writtenTo('tariff', ({ db, record: { document }, siteId, ...where }) =>
      TARIFFS.open(db)(siteId).insert({ ...where, document }),
    ),
  },
  pumps: {
    ...common('pump'),
    read: async (db, siteId) => later(await pumpRows(db, siteId).execute(), pumpRecord),
    write: writtenTo('pump', ({ db, record: { document, fit }, siteId, ...where }) =>
      PUMPS.open(db)(siteId).insert({ ...where, document, fit }),
    ),
  },
  loops: {
    ...common('loop'),
    read: async (db, siteId) => later(await loopRows(db, siteId).execute(), loopRecord),
    write: writtenTo('loop', ({ db, record: { document }, siteId, ...where }) =>
      LOOPS.open(db)(siteId).insert({ ...where, document }),
    ),
  },
  schedules: {
    ...common('schedule'),
    read: async (db, siteId) => later(await scheduleRows(db, siteId).execute(), scheduleRecord),
    write: writtenTo('schedule', ({ db, record: { document }, siteId, ...where }) =>
      SCHEDULES.open(db)(siteId).put({ ...where, document, expectedVersion: 'none' }),
    ),
  },
  comparisons: {
    ...common('comparison'),
    read: async (db, siteId) =>
      later(await comparisonRows(db, siteId).execute(), (row) =>
        documentRecord<StoredComparison>(row, 'comparison'),
      ),
    write: writtenTo('comparison', ({ db, record: { document }, siteId, ...where }) =>
      COMPARISONS.open(db)(siteId).insert({ ...where, document }),
    ),
  },
  upgradePlans: {
    ...common('upgrade_plan'),
    read: async (db, siteId) =>
      later(await planRows(db, siteId).execute(), (row) =>
        documentRecord<StoredUpgradePlan>(row, 'upgrade_plan'),
      ),
    write: writtenTo('upgrade_plan', ({ db, record: { document }, siteId, ...where }) =>
      UPGRADE_PLANS.open(db)(siteId).insert({ ...where, document }),
    ),
  },
  maintenanceTasks: { ...common('maintenance_task'), ...EXPORTED_TASKS },
  completions: { ...common('maintenance_completion'), ...EXPORTED_COMPLETIONS },
  calibrations: EXPORTED_CALIBRATIONS,
  baselines: EXPORTED_BASELINES,
  readings: EXPORTED_READINGS,
};
