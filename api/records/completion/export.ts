/** Routine checks and their completions, read and written as part of a whole site. */
import type { Transaction } from 'kysely';
import { type KindOfRecord, later, ofTable } from '../../store/exported-kind.ts';
import type { Tables } from '../../store/tables.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { isRecord } from '../../store/where-clauses.ts';
import { taskColumns, taskRecord } from '../task/rows.ts';
import { COMPLETIONS_MAX, type Completion, type CopiedCompletion } from './contract.ts';
import { completionColumns, completionRecord, doneColumns } from './kind.ts';

interface Done {
  readonly last: Completion;
  readonly count: number;
  readonly changedAt: number;
}

/** What the row of a task says of its completions. */
async function settle(
  all: Transaction<Tables>,
  key: { readonly siteId: string; readonly id: string },
  { last, count, changedAt }: Done,
): Promise<void> {
  const row = await all
    .selectFrom('maintenance_task')
    .selectAll()
    .where(isRecord(key))
    .executeTakeFirstOrThrow();
  await all
    .updateTable('maintenance_task')
    .set({
      ...taskColumns(taskRecord(row).document, doneColumns(last)),
      completions: count,
      changes: count,
      changed_at: changedAt,
    })
    .where(isRecord(key))
    .execute();
}

export const EXPORTED_COMPLETIONS: KindOfRecord<StoredRecord<CopiedCompletion>> = {
  ...ofTable('maintenance_completion'),
  most: COMPLETIONS_MAX,

  async read(db, siteId) {
    const rows = await db
      .selectFrom('maintenance_completion')
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return later(rows, (row) => {
      const { taskId, ...record } = completionRecord(row);
      return { ...record, document: { ...record.document, task: taskId } };
    });
  },

  async write(all, siteId, records) {
    const done = new Map<string, Done>();
    for (const make of records) {
      const { id, version, createdAt, updatedAt, document } = make();
      const { task, ...completion } = document;
      await all
        .insertInto('maintenance_completion')
        .values({
          site_id: siteId,
          task_id: task,
          id,
          version,
          created_at: createdAt,
          updated_at: updatedAt,
          ...completionColumns(completion),
        })
        .execute();
      const before = done.get(task);
      done.set(task, {
        last: before !== undefined && before.last.at > completion.at ? before.last : completion,
        count: (before?.count ?? 0) + 1,
        changedAt: Math.max(before?.changedAt ?? 0, createdAt),
      });
    }
    for (const [id, one] of done) await settle(all, { siteId, id }, one);
  },
};
