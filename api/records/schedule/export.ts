/** Exports schedules with their site, and imports them. */
import { type KindOfRecord, later, ofTable, writtenTo } from '../../store/exported-kind.ts';
import { SCHEDULES, type ScheduleRecord, scheduleRecord } from './kind.ts';

export const EXPORTED_SCHEDULES: KindOfRecord<ScheduleRecord> = {
  ...ofTable('schedule'),
  async read(db, siteId) {
    const rows = await db
      .selectFrom('schedule')
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return later(rows, scheduleRecord);
  },
  write: writtenTo('schedule', ({ db, record: { document }, siteId, ...where }) =>
    SCHEDULES.open(db)(siteId).put({ ...where, document, expectedVersion: 'none' }),
  ),
};
