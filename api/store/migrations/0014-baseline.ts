/** Baselines of loops: what was requested of them, and when what they compare changed. */
import type { Migration } from 'kysely';

export const baseline: Migration = {
  async up(db) {
    await db.schema
      .createTable('loop_baseline')
      .addColumn('site_id', 'text', (column) => column.notNull())
      .addColumn('loop_id', 'text', (column) => column.notNull())
      .addColumn('requested_from', 'bigint')
      .addColumn('changed_at', 'bigint')
      .addPrimaryKeyConstraint('loop_baseline_key', ['site_id', 'loop_id'])
      .addForeignKeyConstraint(
        'loop_baseline_of_loop',
        ['site_id', 'loop_id'],
        'loop',
        ['site_id', 'id'],
        (key) => key.onDelete('cascade'),
      )
      .execute();
  },
};
