/** The first tables: sites, their pumps, their loops. */
import type { CreateTableBuilder, Kysely, Migration } from 'kysely';

const withRecordColumns = <Name extends string, Column extends string>(
  table: CreateTableBuilder<Name, Column>,
) =>
  table
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('version', 'integer', (column) => column.notNull())
    .addColumn('created_at', 'bigint', (column) => column.notNull())
    .addColumn('updated_at', 'bigint', (column) => column.notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('document', 'text', (column) => column.notNull())
    .addColumn('digest', 'text', (column) => column.notNull());

async function makeSite(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable('site'))
    .addPrimaryKeyConstraint('site_key', ['id'])
    .execute();
}

async function makePump(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable('pump').addColumn('site_id', 'text', (c) => c.notNull()))
    .addColumn('fit', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('pump_key', ['site_id', 'id'])
    .addForeignKeyConstraint('pump_of_site', ['site_id'], 'site', ['id'], (key) => key.onDelete('restrict'))
    .execute();
}

// The key of a loop's pump holds the site too, so that no loop can hold a pump of another site.
async function makeLoop(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable('loop').addColumn('site_id', 'text', (c) => c.notNull()))
    .addColumn('installed_pump_id', 'text')
    .addPrimaryKeyConstraint('loop_key', ['site_id', 'id'])
    .addForeignKeyConstraint('loop_of_site', ['site_id'], 'site', ['id'], (key) => key.onDelete('restrict'))
    .addForeignKeyConstraint(
      'loop_installed_pump',
      ['site_id', 'installed_pump_id'],
      'pump',
      ['site_id', 'id'],
      (key) => key.onDelete('restrict'),
    )
    .execute();
  await db.schema
    .createIndex('loop_by_installed_pump')
    .on('loop')
    .columns(['site_id', 'installed_pump_id'])
    .execute();
}

async function makeListIndexes(db: Kysely<unknown>, table: 'pump' | 'loop'): Promise<void> {
  await db.schema
    .createIndex(`${table}_by_creation`)
    .on(table)
    .columns(['site_id', 'created_at', 'id'])
    .execute();
  await db.schema
    .createIndex(`${table}_by_name`)
    .on(table)
    .columns(['site_id', 'name', 'created_at', 'id'])
    .execute();
}

export const sitePumpLoop: Migration = {
  async up(db) {
    await makeSite(db);
    await makePump(db);
    await makeLoop(db);
    await makeListIndexes(db, 'pump');
    await makeListIndexes(db, 'loop');
  },
};
