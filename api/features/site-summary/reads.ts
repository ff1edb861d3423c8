/** What a summary reads from a database besides single records. */
import type { Kysely } from 'kysely';
import { scheduleRecord } from '../../records/schedule/kind.ts';
import type { Tables } from '../../store/tables.ts';
import type { SummaryReads } from './reads-contract.ts';

export const summaryReads = (db: Kysely<Tables>): SummaryReads => ({
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

  async countLoops(siteId) {
    const { count } = await db
      .selectFrom('loop')
      .select(({ fn }) => fn.countAll().as('count'))
      .where('site_id', '=', siteId)
      .executeTakeFirstOrThrow();
    return Number(count);
  },
});
