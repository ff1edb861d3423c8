/** Routine checks in a database. */

import { type Expression, expressionBuilder, type Kysely, type SqlBool } from 'kysely';
import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { unlessKeyTaken } from '../../store/keys.ts';
import { defineKind } from '../../store/kind.ts';
import { pageOf, rowsToRead } from '../../store/page.ts';
import { recordReference } from '../../store/record-reference.ts';
import type { Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import {
  type InSite,
  type InUse,
  type Replacement,
  type UnknownLoop,
  type UnknownPump,
  USED_BY_LIMIT,
} from '../../store/versions.ts';
import { hasVersion, isRecord, keyColumn, mayBeOnPage } from '../../store/where-clauses.ts';
import {
  ALL_TASKS_LIMIT,
  LOOPS_ASKED_MAX,
  NEW_TASKS_MAX,
  type NewMaintenanceTasks,
  type TaskChoice,
  type TaskOperations,
} from './contract.ts';
import { NEVER_DONE, taskColumns, taskRecord } from './rows.ts';

type TaskReads = Pick<TaskOperations, 'get' | 'list' | 'all' | 'totals'>;

const TABLE = 'maintenance_task';

function isOfLoops(loops: readonly string[]) {
  if (loops.length > LOOPS_ASKED_MAX) throw new Error(`invariant: ${loops.length} loops asked about at once`);
  const column = expressionBuilder<Tables, typeof TABLE>();
  return loops.length === 0 ? column.lit(false) : column('loop_id', 'in', loops);
}

function isChosen(choice: TaskChoice & InSite): Expression<SqlBool> {
  const { siteId, loop, loops, pump, kind, otherThan, name, dueFrom, dueUntil } = choice;
  const column = expressionBuilder<Tables, typeof TABLE>();
  const conditions = [column('site_id', '=', siteId)];
  if (loop === null) conditions.push(column('loop_id', 'is', null));
  else if (loop !== undefined) conditions.push(column('loop_id', '=', loop));
  if (loops !== undefined) conditions.push(isOfLoops(loops));
  if (pump !== undefined) conditions.push(column('pump_id', '=', pump));
  if (kind !== undefined) conditions.push(column('kind', '=', kind));
  if (otherThan !== undefined) conditions.push(column('kind', '!=', otherThan));
  if (name !== undefined) conditions.push(column('name', '=', name));
  if (dueFrom !== undefined) conditions.push(column('next_due', '>=', dueFrom));
  if (dueUntil !== undefined) conditions.push(column('next_due', '<=', dueUntil));
  return column.and(conditions);
}

async function totalsOf(
  db: Kysely<Tables>,
  { today, ...choice }: TaskChoice & InSite & { readonly today: number },
) {
  const sums = await db
    .selectFrom(TABLE)
    .select(({ fn }) => [
      fn.countAll<number | string>().as('tasks'),
      fn.countAll<number | string>().filterWhere('next_due', '<=', today).as('due'),
      fn.countAll<number | string>().filterWhere('next_due', '<', today).as('overdue'),
      fn.sum<number | null>('year_hours').as('hours'),
      fn.sum<number | null>('year_parts').as('parts'),
    ])
    .where(isChosen(choice))
    .executeTakeFirstOrThrow();
  return {
    tasks: Number(sums.tasks),
    due: Number(sums.due),
    overdue: Number(sums.overdue),
    hours: sums.hours ?? 0,
    parts: sums.parts ?? 0,
  };
}

const taskReads = (db: Kysely<Tables>, siteId: string): TaskReads => ({
  async get(id) {
    const row = await db.selectFrom(TABLE).selectAll().where(isRecord({ siteId, id })).executeTakeFirst();
    return row === undefined ? undefined : taskRecord(row);
  },

  async list(request) {
    const rows = await db
      .selectFrom(TABLE)
      .selectAll()
      .where(mayBeOnPage({ siteId, ...request }))
      .where(isChosen({ siteId, ...request }))
      .orderBy('created_at')
      .orderBy('id')
      .limit(rowsToRead(request.limit))
      .execute();
    return pageOf(rows, { limit: request.limit, read: taskRecord });
  },

  async all(asked) {
    const choice = { siteId, ...asked };
    const { actual } = await db
      .selectFrom(TABLE)
      .select((eb) => eb.fn.countAll<number | string>().as('actual'))
      .where(isChosen(choice))
      .executeTakeFirstOrThrow();
    const count = Number(actual);
    if (count > ALL_TASKS_LIMIT) return { outcome: 'too-many', limit: ALL_TASKS_LIMIT, actual: count };
    const rows = await db
      .selectFrom(TABLE)
      .selectAll()
      .where(isChosen(choice))
      .orderBy('created_at')
      .orderBy('id')
      .limit(ALL_TASKS_LIMIT)
      .execute();
    return { outcome: 'all', records: rows.map(taskRecord) };
  },

  totals: (asked) => totalsOf(db, { siteId, ...asked }),
});

/** What stands in the way of a loop or a pump that is to be deleted. */
export async function tasksThatUse(
  db: Kysely<Tables>,
  choice: TaskChoice & InSite,
): Promise<InUse['usedBy']> {
  const tasks = await db
    .selectFrom(TABLE)
    .select(['id', 'key', 'name'])
    .where(isChosen(choice))
    .orderBy('created_at')
    .orderBy('id')
    .limit(USED_BY_LIMIT)
    .execute();
  return tasks.map((task) => ({ kind: 'maintenance-task', ...recordReference(task) }));
}

/** Asked after a reference was found broken: the first that names nothing. */
async function unknownReference(
  db: Kysely<Tables>,
  siteId: string,
  documents: readonly MaintenanceTask[],
): Promise<UnknownLoop | UnknownPump> {
  for (const { loop, pump } of documents) {
    const table = loop === undefined ? 'pump' : 'loop';
    const id = loop ?? pump;
    const row = await db.selectFrom(table).select('id').where(isRecord({ siteId, id })).executeTakeFirst();
    if (row !== undefined) continue;
    return loop === undefined
      ? { outcome: 'unknown-pump', pumpId: id }
      : { outcome: 'unknown-loop', loopId: id };
  }
  throw new Error('invariant: a task was written to a site that is not there');
}

async function insertTasks(db: Kysely<Tables>, { siteId, now, tasks }: NewMaintenanceTasks & InSite) {
  if (tasks.length === 0) return { outcome: 'inserted', records: [] } as const;
  if (tasks.length > NEW_TASKS_MAX) throw new Error(`invariant: ${tasks.length} tasks written at once`);
  const insertion = db
    .insertInto(TABLE)
    .values(
      tasks.map(({ id, document, key = null }) => ({
        site_id: siteId,
        id,
        version: 1,
        created_at: now,
        updated_at: now,
        completions: 0,
        changes: 0,
        changed_at: now,
        ...taskColumns(document, NEVER_DONE),
        key,
      })),
    )
    .returningAll();
  const rows = await unlessReferenceBroken(() => insertion.execute());
  if (rows === undefined) {
    return await unknownReference(
      db,
      siteId,
      tasks.map(({ document }) => document),
    );
  }
  const byId = new Map(rows.map((row) => [row.id, taskRecord(row)]));
  return { outcome: 'inserted', records: tasks.flatMap(({ id }) => byId.get(id) ?? []) } as const;
}

/** What was done before stays done, so that the day it is due next follows from the new interval. */
async function replaceTask(
  db: Kysely<Tables>,
  { siteId, id, document, now, key, expectedVersion }: Replacement<MaintenanceTask> & InSite,
) {
  const rows = await unlessReferenceBroken(() =>
    db.transaction().execute(async (all) => {
      // The first write holds the row, so that no completion comes in between.
      const held = await all
        .updateTable(TABLE)
        .set((eb) => ({
          version: eb('version', '+', 1),
          changes: eb('changes', '+', 1),
          updated_at: now,
          changed_at: now,
        }))
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .returning(['last_done_at', 'last_done_day'])
        .executeTakeFirst();
      if (held === undefined) return [];
      return await all
        .updateTable(TABLE)
        .set({ ...taskColumns(document, held), ...keyColumn(key) })
        .where(isRecord({ siteId, id }))
        .returningAll()
        .execute();
    }),
  );
  if (rows === undefined) return await unknownReference(db, siteId, [document]);
  const [row] = rows;
  if (row !== undefined) return { outcome: 'replaced', record: taskRecord(row) } as const;
  return await staleOrMissing(db, TABLE, { siteId, id });
}

const taskWrites = (db: Kysely<Tables>, siteId: string): Omit<TaskOperations, keyof TaskReads> => ({
  async insert({ now, ...task }) {
    const inserted = await unlessKeyTaken(db, { siteId, table: TABLE, key: task.key }, () =>
      insertTasks(db, { siteId, now, tasks: [task] }),
    );
    if (inserted.outcome !== 'inserted') return inserted;
    const [record] = inserted.records;
    if (record === undefined) throw new Error('invariant: one task was inserted');
    return { outcome: 'inserted', record };
  },

  insertAll: (tasks) => insertTasks(db, { ...tasks, siteId }),

  replace: (replacement) =>
    unlessKeyTaken(db, { siteId, table: TABLE, key: replacement.key }, () =>
      replaceTask(db, { ...replacement, siteId }),
    ),

  async delete({ id, expectedVersion }) {
    const { numDeletedRows } = await db
      .deleteFrom(TABLE)
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .executeTakeFirst();
    if (numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, TABLE, { siteId, id });
  },
});

export const TASKS = defineKind<TaskOperations>({
  name: 'maintenance-task',
  reads: { get: 'read-again', list: 'read-again', all: 'read-again', totals: 'read-again' },
  open: (db) => (siteId) => ({ ...taskReads(db, siteId), ...taskWrites(db, siteId) }),
});
