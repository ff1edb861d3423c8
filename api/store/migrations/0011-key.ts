/** Users' keys of pumps, loops, tariffs and routine checks, each once a site and kind. */
import type { Migration } from 'kysely';

const KEYED = ['pump', 'loop', 'tariff', 'maintenance_task'];

export const key: Migration = {
  async up(db) {
    for (const table of KEYED) {
      await db.schema.alterTable(table).addColumn('key', 'text').execute();
      // Rows without a key do not meet in it, on any database: nulls are distinct.
      await db.schema.createIndex(`${table}_by_key`).unique().on(table).columns(['site_id', 'key']).execute();
    }
  },
};
