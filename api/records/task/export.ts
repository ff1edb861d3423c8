/** Routine checks, read and written as part of a whole site. */
import type { KindsOfRecords } from '../../features/site-copy/contract.ts';
import { type KindOfRecord, later, writtenTo } from '../../store/exported-kind.ts';
import { TASKS } from './kind.ts';
import { taskRecord } from './rows.ts';

export const EXPORTED_TASKS: Pick<KindOfRecord<KindsOfRecords['maintenanceTasks']>, 'read' | 'write'> = {
  async read(db, siteId) {
    const rows = await db
      .selectFrom('maintenance_task')
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return later(rows, taskRecord);
  },
  write: writtenTo('maintenance_task', ({ db, record: { document }, siteId, id, now }) =>
    TASKS.open(db)(siteId).insert({ now, tasks: [{ id, document }] }),
  ),
};
