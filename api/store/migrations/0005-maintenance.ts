/** Routine checks of loops and pumps, with their completions. */
import type { CreateTableBuilder, Kysely, Migration } from 'kysely';

const TASK = 'maintenance_task';
const COMPLETION = 'maintenance_completion';

const withRecordColumns = <Name extends string, Column extends string>(
  table: CreateTableBuilder<Name, Column>,
) =>
  table
    .addColumn('site_id', 'text', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('version', 'integer', (column) => column.notNull())
    .addColumn('created_at', 'bigint', (column) => column.notNull())
    .addColumn('updated_at', 'bigint', (column) => column.notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('document', 'text', (column) => column.notNull())
    .addColumn('digest', 'text', (column) => column.notNull());

// What follows from a task and its completions stands beside them, so that what is due is found without reading them.
async function makeTask(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable(TASK))
    .addColumn('kind', 'text', (column) => column.notNull())
    .addColumn('loop_id', 'text')
    .addColumn('pump_id', 'text')
    .addColumn('year_hours', 'double precision', (column) => column.notNull())
    .addColumn('year_parts', 'double precision', (column) => column.notNull())
    .addColumn('next_due', 'integer', (column) => column.notNull())
    .addColumn('last_done_at', 'bigint')
    .addColumn('last_done_day', 'integer')
    .addColumn('completions', 'integer', (column) => column.notNull())
    .addColumn('changes', 'integer', (column) => column.notNull())
    .addColumn('changed_at', 'bigint', (column) => column.notNull())
    .addPrimaryKeyConstraint('maintenance_task_key', ['site_id', 'id'])
    .addForeignKeyConstraint('maintenance_task_of_site', ['site_id'], 'site', ['id'], (key) =>
      key.onDelete('restrict'),
    )
    .addForeignKeyConstraint(
      'maintenance_task_loop',
      ['site_id', 'loop_id'],
      'loop',
      ['site_id', 'id'],
      (key) => key.onDelete('restrict'),
    )
    .addForeignKeyConstraint(
      'maintenance_task_pump',
      ['site_id', 'pump_id'],
      'pump',
      ['site_id', 'id'],
      (key) => key.onDelete('restrict'),
    )
    .execute();
}

async function makeTaskIndexes(db: Kysely<unknown>): Promise<void> {
  const orders = [
    { name: 'by_creation', columns: ['created_at', 'id'] },
    { name: 'by_name', columns: ['name', 'created_at', 'id'] },
    { name: 'by_loop', columns: ['loop_id', 'created_at', 'id'] },
    { name: 'by_pump', columns: ['pump_id', 'created_at', 'id'] },
    { name: 'by_due', columns: ['next_due'] },
  ];
  for (const { name, columns } of orders) {
    await db.schema
      .createIndex(`maintenance_task_${name}`)
      .on(TASK)
      .columns(['site_id', ...columns])
      .execute();
  }
}

async function makeCompletion(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable(COMPLETION))
    .addColumn('task_id', 'text', (column) => column.notNull())
    .addColumn('done_at', 'bigint', (column) => column.notNull())
    .addPrimaryKeyConstraint('maintenance_completion_key', ['site_id', 'id'])
    .addUniqueConstraint('maintenance_completion_once', ['site_id', 'task_id', 'done_at'])
    .addForeignKeyConstraint(
      'maintenance_completion_of_task',
      ['site_id', 'task_id'],
      TASK,
      ['site_id', 'id'],
      (key) => key.onDelete('cascade'),
    )
    .execute();
}

export const maintenance: Migration = {
  async up(db) {
    await makeTask(db);
    await makeTaskIndexes(db);
    await makeCompletion(db);
  },
};
