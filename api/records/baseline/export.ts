/** Where the baselines of loops begin, read and written as part of a whole site. */
import { type KindOfRecord, later, RECORDS_OF_A_KIND_MAX } from '../../store/exported-kind.ts';
import type { StoredRecord } from '../../store/versions.ts';
import type { CopiedBaseline } from './contract.ts';
import { startOf } from './kind.ts';

const TABLE = 'loop_baseline';

export const EXPORTED_BASELINES: KindOfRecord<StoredRecord<CopiedBaseline>> = {
  most: RECORDS_OF_A_KIND_MAX,

  async count(db, siteId) {
    const { records } = await db
      .selectFrom(TABLE)
      .select(({ fn }) => fn.countAll<number | string>().as('records'))
      .where('site_id', '=', siteId)
      .executeTakeFirstOrThrow();
    return { records: Number(records), characters: 0 };
  },

  async read(db, siteId) {
    const rows = await db
      .selectFrom(TABLE)
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('loop_id')
      .execute();
    return later(rows, (row) => {
      const at = row.requested_from ?? row.changed_at ?? 0;
      return {
        ...{ id: row.loop_id, version: 1, createdAt: at, updatedAt: at, name: 'baseline' },
        document: { loop: row.loop_id, ...startOf(row) },
      };
    });
  },

  async write(all, siteId, records) {
    for (const make of records) {
      const { loop, requestedFrom, changedAt } = make().document;
      await all
        .insertInto(TABLE)
        .values({ site_id: siteId, loop_id: loop, requested_from: requestedFrom, changed_at: changedAt })
        .execute();
    }
  },
};
