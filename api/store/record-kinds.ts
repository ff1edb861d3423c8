/** How each kind of record of a site is read and written as a whole: the list that every new kind joins. */
import type { Kysely } from 'kysely';
import { loopWrites } from './loop-store.ts';
import { pumpWrites } from './pump-store.ts';
import { loopRecord, pumpRecord, scheduleRecord, tariffRecord } from './record.ts';
import { scheduleStore } from './schedule-store.ts';
import type { Tables } from './schema.ts';
import type { KindsOfRecords, RecordKind } from './site-contents-contract.ts';
import { tariffWrites } from './tariff-store.ts';

type RecordTable = 'tariff' | 'pump' | 'loop' | 'schedule';

interface KindOfRecord<Kept> {
  readonly table: RecordTable;
  /** In the order createdAt, then id; each is made when it is asked for. */
  read(db: Kysely<Tables>, siteId: string): Promise<readonly (() => Kept)[]>;
  /** As a new record of its creation's time. */
  insert(db: Kysely<Tables>, siteId: string, record: Kept): Promise<{ readonly outcome: string }>;
}

const later = <Row, Kept>(rows: readonly Row[], make: (row: Row) => Kept): readonly (() => Kept)[] =>
  rows.map((row) => () => make(row));

const newRecord = (siteId: string, { id, createdAt }: { id: string; createdAt: number }) => ({
  siteId,
  id,
  now: createdAt,
});

export const RECORD_KINDS: { readonly [Kind in RecordKind]: KindOfRecord<KindsOfRecords[Kind]> } = {
  tariffs: {
    table: 'tariff',
    read: async (db, siteId) =>
      later(
        await db
          .selectFrom('tariff')
          .selectAll()
          .where('site_id', '=', siteId)
          .orderBy('created_at')
          .orderBy('id')
          .execute(),
        tariffRecord,
      ),
    insert: (db, siteId, record) =>
      tariffWrites(db).insertTariff({ ...newRecord(siteId, record), document: record.document }),
  },
  pumps: {
    table: 'pump',
    read: async (db, siteId) =>
      later(
        await db
          .selectFrom('pump')
          .selectAll()
          .where('site_id', '=', siteId)
          .orderBy('created_at')
          .orderBy('id')
          .execute(),
        pumpRecord,
      ),
    insert: (db, siteId, record) =>
      pumpWrites(db).insertPump({
        ...newRecord(siteId, record),
        document: record.document,
        fit: record.fit,
      }),
  },
  loops: {
    table: 'loop',
    read: async (db, siteId) =>
      later(
        await db
          .selectFrom('loop')
          .selectAll()
          .where('site_id', '=', siteId)
          .orderBy('created_at')
          .orderBy('id')
          .execute(),
        loopRecord,
      ),
    insert: (db, siteId, record) =>
      loopWrites(db).insertLoop({ ...newRecord(siteId, record), document: record.document }),
  },
  schedules: {
    table: 'schedule',
    read: async (db, siteId) =>
      later(
        await db
          .selectFrom('schedule')
          .selectAll()
          .where('site_id', '=', siteId)
          .orderBy('created_at')
          .orderBy('id')
          .execute(),
        scheduleRecord,
      ),
    insert: (db, siteId, record) =>
      scheduleStore(db).putSchedule({
        ...newRecord(siteId, record),
        document: record.document,
        expectedVersion: 'none',
      }),
  },
};
