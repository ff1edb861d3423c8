/** Prices by time: tariffs, the schedules of loops, and what refers to a tariff. */
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

async function makeTariff(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable('tariff').addColumn('site_id', 'text', (c) => c.notNull()))
    .addPrimaryKeyConstraint('tariff_key', ['site_id', 'id'])
    .addForeignKeyConstraint('tariff_of_site', ['site_id'], 'site', ['id'], (key) => key.onDelete('restrict'))
    .execute();
  await db.schema
    .createIndex('tariff_by_creation')
    .on('tariff')
    .columns(['site_id', 'created_at', 'id'])
    .execute();
  await db.schema
    .createIndex('tariff_by_name')
    .on('tariff')
    .columns(['site_id', 'name', 'created_at', 'id'])
    .execute();
}

// A schedule is part of its loop: its id is that of the loop, and it goes with it.
async function makeSchedule(db: Kysely<unknown>): Promise<void> {
  await withRecordColumns(db.schema.createTable('schedule').addColumn('site_id', 'text', (c) => c.notNull()))
    .addColumn('tariff_id', 'text')
    .addPrimaryKeyConstraint('schedule_key', ['site_id', 'id'])
    .addForeignKeyConstraint('schedule_of_loop', ['site_id', 'id'], 'loop', ['site_id', 'id'], (key) =>
      key.onDelete('cascade'),
    )
    .addForeignKeyConstraint(
      'schedule_tariff',
      ['site_id', 'tariff_id'],
      'tariff',
      ['site_id', 'id'],
      (key) => key.onDelete('restrict'),
    )
    .execute();
  await db.schema
    .createIndex('schedule_by_tariff')
    .on('schedule')
    .columns(['site_id', 'tariff_id'])
    .execute();
}

// A table of its own: a key of two columns cannot be added to the table of sites on every database.
async function makeSiteTariff(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable('site_tariff')
    .addColumn('site_id', 'text', (column) => column.notNull())
    .addColumn('tariff_id', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('site_tariff_key', ['site_id'])
    .addForeignKeyConstraint('site_tariff_site', ['site_id'], 'site', ['id'], (key) =>
      key.onDelete('restrict'),
    )
    .addForeignKeyConstraint(
      'site_tariff_tariff',
      ['site_id', 'tariff_id'],
      'tariff',
      ['site_id', 'id'],
      (key) => key.onDelete('restrict'),
    )
    .execute();
}

export const tariffSchedule: Migration = {
  async up(db) {
    await makeTariff(db);
    await makeSchedule(db);
    await makeSiteTariff(db);
  },
};
