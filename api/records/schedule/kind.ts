/** The schedules of loops in a database, each under the id of its loop. */
import type { Kysely } from 'kysely';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { preparedRead } from '../../store/prepared-read.ts';
import { common } from '../../store/rows.ts';
import type { Store } from '../../store/store.ts';
import type { ScheduleRow, Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import type { ExpectedVersion, RecordKey, StoredRecord } from '../../store/versions.ts';
import { hasVersion, isRecord } from '../../store/where-clauses.ts';

type ScheduleStore = Pick<Store, 'getSchedule' | 'putSchedule' | 'deleteSchedule' | 'setpointVersions'>;

const contentColumns = (document: Schedule) => {
  const text = jsonText(document);
  return { name: 'schedule', document: text, digest: digestOf([text]), tariff_id: document.tariff };
};

/** The two values of its key are its only parameters, in the order site, loop. */
const setpointQuery = (db: Kysely<Tables>, { siteId, id }: RecordKey) =>
  db
    .selectFrom('loop')
    .innerJoin('site', 'site.id', 'loop.site_id')
    .leftJoin('pump', (join) =>
      join.onRef('pump.site_id', '=', 'loop.site_id').onRef('pump.id', '=', 'loop.installed_pump_id'),
    )
    .leftJoin('schedule', (join) =>
      join.onRef('schedule.site_id', '=', 'loop.site_id').onRef('schedule.id', '=', 'loop.id'),
    )
    .leftJoin('site_tariff', 'site_tariff.site_id', 'loop.site_id')
    .leftJoin('tariff', (join) =>
      join
        .onRef('tariff.site_id', '=', 'loop.site_id')
        .on(({ eb, fn, ref }) =>
          eb('tariff.id', '=', fn.coalesce(ref('schedule.tariff_id'), ref('site_tariff.tariff_id'))),
        ),
    )
    .select([
      'site.version as site',
      'loop.version as loop',
      'loop.installed_pump_id as pumpId',
      'pump.version as pump',
      'schedule.version as schedule',
      'schedule.created_at as scheduleCreatedAt',
      'tariff.id as tariffId',
      'tariff.version as tariff',
    ])
    .where('loop.site_id', '=', siteId)
    .where('loop.id', '=', id);

/** One statement decides; only where a reference is broken is it asked which. */
async function putSchedule(
  db: Kysely<Tables>,
  { siteId, id, document, now, expectedVersion }: Parameters<ScheduleStore['putSchedule']>[0],
): ReturnType<ScheduleStore['putSchedule']> {
  const content = contentColumns(document);
  const broken = async () => {
    const loop = await db.selectFrom('loop').select('id').where(isRecord({ siteId, id })).executeTakeFirst();
    return { outcome: loop === undefined ? 'missing' : 'unknown-tariff' } as const;
  };
  if (expectedVersion === 'none') {
    const insertion = db
      .insertInto('schedule')
      .values({ site_id: siteId, id, version: 1, created_at: now, updated_at: now, ...content })
      .onConflict((conflict) => conflict.columns(['site_id', 'id']).doNothing())
      .returningAll();
    const rows = await unlessReferenceBroken(() => insertion.execute());
    if (rows === undefined) return await broken();
    const [row] = rows;
    return row === undefined ? { outcome: 'exists' } : { outcome: 'inserted', record: scheduleRecord(row) };
  }
  const update = db
    .updateTable('schedule')
    .set((eb) => ({ version: eb('version', '+', 1), updated_at: now, ...content }))
    .where(isRecord({ siteId, id }))
    .where(hasVersion(expectedVersion))
    .returningAll();
  const rows = await unlessReferenceBroken(() => update.execute());
  if (rows === undefined) return await broken();
  const [row] = rows;
  if (row !== undefined) return { outcome: 'replaced', record: scheduleRecord(row) };
  return await staleOrMissing(db, 'schedule', { siteId, id });
}

export function scheduleStore(db: Kysely<Tables>): ScheduleStore {
  const setpointVersions = preparedRead<SetpointVersions>(db, ([siteId = '', id = '']) =>
    setpointQuery(db, { siteId, id }),
  );
  return {
    async getSchedule(key) {
      const row = await db.selectFrom('schedule').selectAll().where(isRecord(key)).executeTakeFirst();
      return row === undefined ? undefined : scheduleRecord(row);
    },

    putSchedule: (schedule) => putSchedule(db, schedule),

    async deleteSchedule({ siteId, id, expectedVersion }) {
      const { numDeletedRows } = await db
        .deleteFrom('schedule')
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .executeTakeFirst();
      if (numDeletedRows > 0n) return { outcome: 'deleted' };
      return await staleOrMissing(db, 'schedule', { siteId, id });
    },

    async setpointVersions({ siteId, id }) {
      const [versions] = await setpointVersions([siteId, id]);
      return versions;
    },
  };
}

/** Its id is that of its loop. */

export type ScheduleRecord = StoredRecord<Schedule>;

export function scheduleRecord(row: ScheduleRow): ScheduleRecord {
  checkDigest(row, 'schedule', [row.document]);
  const document: Schedule = JSON.parse(row.document);
  return { ...common(row), document };
}

/** `none`: there is none yet. */

export interface SchedulePut extends RecordKey {
  readonly document: Schedule;
  readonly now: number;
  readonly expectedVersion: ExpectedVersion | 'none';
}

/** What the setpoint of a loop rests on, without the documents: the versions tell whether what is known still holds. */

export interface SetpointVersions {
  readonly site: number;
  readonly loop: number;
  readonly pumpId: string | null;
  readonly pump: number | null;
  readonly schedule: number | null;
  /** Tells a schedule from one that was deleted before it, whose versions began at 1 too. */
  readonly scheduleCreatedAt: number | null;
  /** That of the schedule, else that of the site. */
  readonly tariffId: string | null;
  readonly tariff: number | null;
}
