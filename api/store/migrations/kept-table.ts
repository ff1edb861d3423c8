/** The table of documents that are kept as they were made. */
import type { Kysely } from 'kysely';

export async function makeKeptTable(db: Kysely<unknown>, table: string): Promise<void> {
  await db.schema
    .createTable(table)
    .addColumn('site_id', 'text', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('version', 'integer', (column) => column.notNull())
    .addColumn('created_at', 'bigint', (column) => column.notNull())
    .addColumn('updated_at', 'bigint', (column) => column.notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('document', 'text', (column) => column.notNull())
    .addColumn('digest', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint(`${table}_key`, ['site_id', 'id'])
    .addForeignKeyConstraint(`${table}_of_site`, ['site_id'], 'site', ['id'], (key) =>
      key.onDelete('restrict'),
    )
    .execute();
  for (const [suffix, columns] of [
    ['by_creation', ['site_id', 'created_at', 'id']],
    ['by_name', ['site_id', 'name', 'created_at', 'id']],
  ] as const) {
    await db.schema
      .createIndex(`${table}_${suffix}`)
      .on(table)
      .columns([...columns])
      .execute();
  }
}
