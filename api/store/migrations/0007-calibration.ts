/** Calibrations of loops: the one in use with its loop, every one that was applied in a table of their own. */
import type { Migration } from 'kysely';

const TABLE = 'loop_calibration';

export const calibration: Migration = {
  async up(db) {
    // One column a statement, which every database understands.
    for (const column of ['calibration', 'calibration_digest', 'calibration_of']) {
      await db.schema.alterTable('loop').addColumn(column, 'text').execute();
    }
    await db.schema
      .createTable(TABLE)
      .addColumn('site_id', 'text', (column) => column.notNull())
      .addColumn('loop_id', 'text', (column) => column.notNull())
      .addColumn('place', 'integer', (column) => column.notNull())
      .addColumn('applied_at', 'bigint', (column) => column.notNull())
      .addColumn('undone_at', 'bigint')
      .addColumn('calibration', 'text', (column) => column.notNull())
      .addColumn('calibration_digest', 'text', (column) => column.notNull())
      .addColumn('calibration_of', 'text', (column) => column.notNull())
      .addPrimaryKeyConstraint('loop_calibration_key', ['site_id', 'loop_id', 'place'])
      .addForeignKeyConstraint(
        'loop_calibration_of_loop',
        ['site_id', 'loop_id'],
        'loop',
        ['site_id', 'id'],
        (key) => key.onDelete('cascade'),
      )
      .execute();
  },
};
