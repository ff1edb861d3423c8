/** The schedules of loops in a database, each under the id of its loop. */
import type { Kysely } from 'kysely';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { defineKind } from '../../store/kind.ts';
import { preparedRead } from '../../store/prepared-read.ts';
import { common } from '../../store/rows.ts';
import type { ScheduleRow, Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import type {
  Deleted,
  Deletion,
  ExpectedVersion,
  Inserted,
  Missing,
  NewRecord,
  RecordKey,
  Replaced,
  Stale,
  StoredRecord,
  UnknownTariff,
} from '../../store/versions.ts';
import { hasVersion, isRecord } from '../../store/where-clauses.ts';

/** Its id is that of its loop. */
export type ScheduleRecord = StoredRecord<Schedule>;

/** `none`: there is none yet. */
export interface SchedulePut extends NewRecord<Schedule> {
  readonly expectedVersion: ExpectedVersion | 'none';
}

type SchedulePutOutcome =
  | Inserted<ScheduleRecord>
  | Replaced<ScheduleRecord>
  | Stale
  | Missing
  | UnknownTariff
  | { readonly outcome: 'exists' };

/** What the setpoint of a loop rests on, without the documents: the versions tell whether what is known still holds. */
interface SetpointVersions {
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

/** By the ids of loops. */
interface ScheduleOperations {
  get(id: string): Promise<ScheduleRecord | undefined>;
  /** Of the loops that have one; at most a few hundred ids. */
  some(ids: readonly string[]): Promise<readonly ScheduleRecord[]>;
  /** `exists` where there should be none yet; `missing` where there is no loop, or no schedule of the version. */
  put(put: SchedulePut): Promise<SchedulePutOutcome>;
  delete(deletion: Deletion): Promise<Deleted | Stale | Missing>;
  /** Undefined without such a loop. */
  setpointVersions(id: string): Promise<SetpointVersions | undefined>;
}

export function scheduleRecord(row: ScheduleRow): ScheduleRecord {
  checkDigest(row, 'schedule', [row.document]);
  const document: Schedule = JSON.parse(row.document);
  return { ...common(row), document };
}

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
  siteId: string,
  { id, document, now, expectedVersion }: SchedulePut,
): Promise<SchedulePutOutcome> {
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

function openSchedules(db: Kysely<Tables>): (siteId: string) => ScheduleOperations {
  const setpointVersions = preparedRead<SetpointVersions>(db, ([siteId = '', id = '']) =>
    setpointQuery(db, { siteId, id }),
  );
  return (siteId) => ({
    async get(id) {
      const row = await db
        .selectFrom('schedule')
        .selectAll()
        .where(isRecord({ siteId, id }))
        .executeTakeFirst();
      return row === undefined ? undefined : scheduleRecord(row);
    },

    async some(ids) {
      if (ids.length === 0) return [];
      const rows = await db
        .selectFrom('schedule')
        .selectAll()
        .where('site_id', '=', siteId)
        .where('id', 'in', ids)
        .execute();
      return rows.map(scheduleRecord);
    },

    put: (schedule) => putSchedule(db, siteId, schedule),

    async delete({ id, expectedVersion }) {
      const { numDeletedRows } = await db
        .deleteFrom('schedule')
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .executeTakeFirst();
      if (numDeletedRows > 0n) return { outcome: 'deleted' };
      return await staleOrMissing(db, 'schedule', { siteId, id });
    },

    async setpointVersions(id) {
      const [versions] = await setpointVersions([siteId, id]);
      return versions;
    },
  });
}

export const SCHEDULES = defineKind<ScheduleOperations>({
  name: 'schedule',
  reads: { get: 'read-again', some: 'read-again', setpointVersions: 'read-again' },
  open: openSchedules,
});
