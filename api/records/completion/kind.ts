/** The completions of routine checks in a database. */
import { expressionBuilder, type Kysely, type Transaction } from 'kysely';
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { defineKind } from '../../store/kind.ts';
import { pageOf, rowsToRead } from '../../store/page.ts';
import { common } from '../../store/rows.ts';
import type { CompletionRow, MaintenanceTaskRow, Tables } from '../../store/tables.ts';
import type { Deleted, InSite, Missing, RecordKey, Stale } from '../../store/versions.ts';
import { isRecord } from '../../store/where-clauses.ts';
import { type Done, NEVER_DONE, taskColumns, taskRecord } from '../task/rows.ts';
import type {
  Completion,
  CompletionDeletion,
  CompletionOperations,
  CompletionRecord,
  NewCompletion,
} from './contract.ts';

const TABLE = 'maintenance_completion';
const TASK = 'maintenance_task';

const ofTask = ({ siteId, taskId }: { readonly siteId: string; readonly taskId: string }) => {
  const column = expressionBuilder<Tables, typeof TABLE>();
  return column.and([column('site_id', '=', siteId), column('task_id', '=', taskId)]);
};

/** A write that changes nothing holds the task's row until the transaction ends; undefined without such a task. */
const heldTask = (all: Transaction<Tables>, key: RecordKey) =>
  all
    .updateTable(TASK)
    .set((eb) => ({ changes: eb.ref('changes') }))
    .where(isRecord(key))
    .returningAll()
    .executeTakeFirst();

/** What the task's row says of its completions, found anew after one came or went. */
async function settleTask(
  all: Transaction<Tables>,
  row: MaintenanceTaskRow,
  { by, now }: { readonly by: 1 | -1; readonly now: number },
): Promise<void> {
  const key = { siteId: row.site_id, taskId: row.id };
  const last = await all
    .selectFrom(TABLE)
    .selectAll()
    .where(ofTask(key))
    .orderBy('done_at', 'desc')
    .limit(1)
    .executeTakeFirst();
  const done = last === undefined ? NEVER_DONE : doneColumns(completionRecord(last).document);
  await all
    .updateTable(TASK)
    .set({
      ...taskColumns(taskRecord(row).document, done),
      completions: row.completions + by,
      changes: row.changes + 1,
      changed_at: now,
    })
    .where(isRecord({ siteId: row.site_id, id: row.id }))
    .execute();
}

async function writeCompletion(
  all: Transaction<Tables>,
  { siteId, taskId, id, document, now }: NewCompletion & InSite,
): Promise<Awaited<ReturnType<CompletionOperations['insert']>>> {
  const task = await heldTask(all, { siteId, id: taskId });
  if (task === undefined) return { outcome: 'missing' };
  const there = await all
    .selectFrom(TABLE)
    .selectAll()
    .where(ofTask({ siteId, taskId }))
    .where('done_at', '=', document.at)
    .executeTakeFirst();
  if (there !== undefined) return { outcome: 'exists', record: completionRecord(there) };
  const row = await all
    .insertInto(TABLE)
    .values({
      site_id: siteId,
      task_id: taskId,
      id,
      version: 1,
      created_at: now,
      updated_at: now,
      ...completionColumns(document),
    })
    .returningAll()
    .executeTakeFirstOrThrow();
  await settleTask(all, task, { by: 1, now });
  return { outcome: 'inserted', record: completionRecord(row) };
}

async function removeCompletion(
  all: Transaction<Tables>,
  { siteId, taskId, id, expectedVersion, now }: CompletionDeletion & InSite,
): Promise<Deleted | Stale | Missing> {
  const task = await heldTask(all, { siteId, id: taskId });
  if (task === undefined) return { outcome: 'missing' };
  const one = all.selectFrom(TABLE).select('version').where(ofTask({ siteId, taskId })).where('id', '=', id);
  const there = await one.executeTakeFirst();
  if (there === undefined) return { outcome: 'missing' };
  if (expectedVersion !== 'any' && expectedVersion !== there.version) {
    return { outcome: 'stale', version: there.version };
  }
  await all.deleteFrom(TABLE).where(isRecord({ siteId, id })).execute();
  await settleTask(all, task, { by: -1, now });
  return { outcome: 'deleted' };
}

const openCompletions =
  (db: Kysely<Tables>) =>
  (siteId: string): CompletionOperations => ({
    insert: (completion) =>
      db.transaction().execute((all) => writeCompletion(all, { ...completion, siteId })),

    async get({ taskId, id }) {
      const row = await db
        .selectFrom(TABLE)
        .selectAll()
        .where(ofTask({ siteId, taskId }))
        .where('id', '=', id)
        .executeTakeFirst();
      return row === undefined ? undefined : completionRecord(row);
    },

    async list({ taskId, limit, after }) {
      const chosen = db.selectFrom(TABLE).selectAll().where(ofTask({ siteId, taskId }));
      const asked =
        after === null
          ? chosen
          : chosen.where(({ eb, refTuple, tuple }) =>
              eb(refTuple('done_at', 'id'), '>', tuple(after.createdAt, after.id)),
            );
      const rows = await asked.orderBy('done_at').orderBy('id').limit(rowsToRead(limit)).execute();
      return pageOf(rows, { limit, read: completionRecord });
    },

    delete: (deletion) => db.transaction().execute((all) => removeCompletion(all, { ...deletion, siteId })),
  });

export const COMPLETIONS = defineKind<CompletionOperations>({
  name: 'completion',
  reads: { get: 'read-again', list: 'read-again' },
  open: openCompletions,
});

export const doneColumns = ({ at, day }: Completion): Done => ({
  last_done_at: at,
  last_done_day: dayOfText(day),
});

export function completionColumns(document: Completion) {
  const text = jsonText(document);
  return { name: 'completion', document: text, digest: digestOf([text]), done_at: document.at };
}

export function completionRecord(row: CompletionRow): CompletionRecord {
  checkDigest(row, 'maintenance_completion', [row.document]);
  const document: Completion = JSON.parse(row.document);
  return { ...common(row), document, taskId: row.task_id };
}
