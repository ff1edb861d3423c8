/** What was measured on loops. */
import type { Kysely, Migration } from 'kysely';

const SERIES = 'reading_series';
const READING = 'reading';
const OUTLET = 'reading_outlet';

// A number of its own for each loop keeps the rows of its readings small: there are half a million of them a year.
async function makeSeries(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable(SERIES)
    .addColumn('series', 'integer', (column) => column.primaryKey())
    .addColumn('site_id', 'text', (column) => column.notNull())
    .addColumn('loop_id', 'text', (column) => column.notNull())
    .addColumn('changes', 'integer', (column) => column.notNull())
    .addUniqueConstraint('reading_series_of_loop', ['site_id', 'loop_id'])
    .addForeignKeyConstraint(
      'reading_series_loop',
      ['site_id', 'loop_id'],
      'loop',
      ['site_id', 'id'],
      (key) => key.onDelete('cascade'),
    )
    .execute();
}

async function makeReading(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable(READING)
    .addColumn('series', 'integer', (column) => column.notNull())
    .addColumn('time', 'bigint', (column) => column.notNull())
    .addColumn('setting', 'double precision', (column) => column.notNull())
    .addColumn('power', 'double precision')
    .addColumn('flow', 'double precision')
    .addColumn('head', 'double precision')
    .addColumn('suction_pressure', 'double precision')
    .addColumn('discharge_pressure', 'double precision')
    .addPrimaryKeyConstraint('reading_key', ['series', 'time'])
    .addForeignKeyConstraint('reading_of_series', ['series'], SERIES, ['series'], (key) =>
      key.onDelete('cascade'),
    )
    .execute();
}

async function makeOutlet(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable(OUTLET)
    .addColumn('series', 'integer', (column) => column.notNull())
    .addColumn('time', 'bigint', (column) => column.notNull())
    .addColumn('outlet', 'text', (column) => column.notNull())
    .addColumn('flow', 'double precision', (column) => column.notNull())
    .addPrimaryKeyConstraint('reading_outlet_key', ['series', 'time', 'outlet'])
    .addForeignKeyConstraint('reading_outlet_of_series', ['series'], SERIES, ['series'], (key) =>
      key.onDelete('cascade'),
    )
    .execute();
}

export const reading: Migration = {
  async up(db) {
    await makeSeries(db);
    await makeReading(db);
    await makeOutlet(db);
  },
};
