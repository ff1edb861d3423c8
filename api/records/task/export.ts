/** Routine checks, read and written as part of a whole site. */

import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { type KindOfRecord, later, ofTable, writtenTo } from '../../store/exported-kind.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { TASKS } from './kind.ts';
import { taskRecord } from './rows.ts';

export const EXPORTED_TASKS: KindOfRecord<StoredRecord<MaintenanceTask>> = {
  ...ofTable('maintenance_task'),
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
  write: writtenTo('maintenance_task', ({ db, record: { document, key }, siteId, id, now }) =>
    TASKS.open(db)(siteId).insert({ id, document, now, key }),
  ),
};
