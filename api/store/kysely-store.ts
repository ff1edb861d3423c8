/** The store as queries that every database understands. */
import { type Kysely, sql } from 'kysely';
import type { Store } from './store.ts';
import type { Tables } from './tables.ts';

/** The database must be migrated, and its driver must speak of failures as `StoreFault` and `ForeignKeyViolation`. */
export const kyselyStore = (db: Kysely<Tables>): Store => ({
  of: (siteId, kind) => kind.open(db)(siteId),
  async ping() {
    await sql`select 1`.execute(db);
  },
  async close() {
    await db.destroy();
  },
});
