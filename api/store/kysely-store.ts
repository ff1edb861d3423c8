/** The store as queries that every database understands. */
import { type Kysely, sql } from 'kysely';
import { calibrationStore } from './calibration-store.ts';
import { comparisonStore } from './comparison-store.ts';
import { completionStore } from './completion-store.ts';
import { loopReads, loopWrites } from './loop-store.ts';
import { taskReads, taskWrites } from './maintenance-task-store.ts';
import { pumpReads, pumpWrites } from './pump-store.ts';
import { readingDeletion } from './reading-deletion.ts';
import { readingReads } from './reading-reads.ts';
import { readingWrites } from './reading-writes.ts';
import { scheduleStore } from './schedule-store.ts';
import type { Tables } from './schema.ts';
import { siteContentsStore } from './site-contents-store.ts';
import { siteStore } from './site-store.ts';
import type { Store } from './store.ts';
import { summaryReads } from './summary-reads.ts';
import { tariffReads, tariffWrites } from './tariff-store.ts';
import { upgradePlanStore } from './upgrade-plan-store.ts';

/** The database must be migrated, and its driver must speak of failures as `StoreFault` and `ForeignKeyViolation`. */
export const kyselyStore = (db: Kysely<Tables>): Store => ({
  ...siteStore(db),
  ...pumpReads(db),
  ...pumpWrites(db),
  ...loopReads(db),
  ...loopWrites(db),
  ...tariffReads(db),
  ...tariffWrites(db),
  ...scheduleStore(db),
  ...summaryReads(db),
  ...siteContentsStore(db),
  ...calibrationStore(db),
  ...comparisonStore(db),
  ...upgradePlanStore(db),
  ...taskReads(db),
  ...taskWrites(db),
  ...completionStore(db),
  ...readingReads(db),
  ...readingWrites(db),
  ...readingDeletion(db),
  async ping() {
    await sql`select 1`.execute(db);
  },
  async close() {
    await db.destroy();
  },
});
