/** The store as queries that every database understands. */
import { type Kysely, sql } from 'kysely';
import { calibrationStore } from '../features/calibration/kind.ts';
import { comparisonStore } from '../features/comparison/kind.ts';
import { siteContentsStore } from '../features/site-copy/contents.ts';
import { summaryReads } from '../features/site-summary/reads.ts';
import { upgradePlanStore } from '../features/upgrade-plan/kind.ts';
import { baselineStore } from '../records/baseline/kind.ts';
import { completionStore } from '../records/completion/kind.ts';
import { loopReads, loopWrites } from '../records/loop/kind.ts';
import { pumpReads, pumpWrites } from '../records/pump/kind.ts';
import { readingDeletion } from '../records/reading/deletion.ts';
import { readingReads } from '../records/reading/reads.ts';
import { readingWrites } from '../records/reading/writes.ts';
import { scheduleStore } from '../records/schedule/kind.ts';
import { siteStore } from '../records/site/kind.ts';
import { tariffReads, tariffWrites } from '../records/tariff/kind.ts';
import { taskReads, taskWrites } from '../records/task/kind.ts';
import type { Store } from './store.ts';
import type { Tables } from './tables.ts';

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
  ...baselineStore(db),
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
