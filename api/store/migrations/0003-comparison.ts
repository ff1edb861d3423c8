/** Comparisons, each kept as it was found. */
import type { Migration } from 'kysely';

const TABLE = 'comparison';

export const comparison: Migration = {
  async up(db) {
    await db.schema
      .createTable(TABLE)
      .addColumn('site_id', 'text', (column) => column.notNull())
      .addColumn('id', 'text', (column) => column.notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('created_at', 'bigint', (column) => column.notNull())
      .addColumn('updated_at', 'bigint', (column) => column.notNull())
      .addColumn('name', 'text', (column) => column.notNull())
      .addColumn('document', 'text', (column) => column.notNull())
      .addColumn('digest', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('comparison_key', ['site_id', 'id'])
      .addForeignKeyConstraint('comparison_of_site', ['site_id'], 'site', ['id'], (key) =>
        key.onDelete('restrict'),
      )
      .execute();
    await db.schema
      .createIndex('comparison_by_creation')
      .on(TABLE)
      .columns(['site_id', 'created_at', 'id'])
      .execute();
    await db.schema
      .createIndex('comparison_by_name')
      .on(TABLE)
      .columns(['site_id', 'name', 'created_at', 'id'])
      .execute();
  },
};
