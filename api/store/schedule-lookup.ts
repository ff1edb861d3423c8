/** The schedules of many loops read from a database at once. */
import type { Kysely } from 'kysely';
import { scheduleRecord } from './record.ts';
import type { ScheduleLookup } from './schedule-lookup-contract.ts';
import type { Tables } from './schema.ts';

export const scheduleLookup = (db: Kysely<Tables>): ScheduleLookup => ({
  async getSchedules({ siteId, ids }) {
    if (ids.length === 0) return [];
    const rows = await db
      .selectFrom('schedule')
      .selectAll()
      .where('site_id', '=', siteId)
      .where('id', 'in', [...ids])
      .execute();
    return rows.map(scheduleRecord);
  },
});
