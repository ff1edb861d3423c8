/** Exports loops with their site, and imports them. */
import { type KindOfRecord, later, ofTable, writtenTo } from '../../store/exported-kind.ts';
import { LOOPS, type LoopRecord, loopRecord } from './kind.ts';

export const EXPORTED_LOOPS: KindOfRecord<LoopRecord> = {
  ...ofTable('loop'),
  async read(db, siteId) {
    const rows = await db
      .selectFrom('loop')
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return later(rows, loopRecord);
  },
  write: writtenTo('loop', ({ db, record: { document, key }, siteId, ...where }) =>
    LOOPS.open(db)(siteId).insert({ ...where, document, key }),
  ),
};
