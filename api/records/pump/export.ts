/** Exports pumps with their site, and imports them. */
import { type KindOfRecord, later, ofTable, writtenTo } from '../../store/exported-kind.ts';
import { PUMPS, type PumpRecord, pumpRecord } from './kind.ts';

export const EXPORTED_PUMPS: KindOfRecord<PumpRecord> = {
  ...ofTable('pump'),
  async read(db, siteId) {
    const rows = await db
      .selectFrom('pump')
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return later(rows, pumpRecord);
  },
  write: writtenTo('pump', ({ db, record: { document, key, fit }, siteId, ...where }) =>
    PUMPS.open(db)(siteId).insert({ ...where, document, key, fit }),
  ),
};
