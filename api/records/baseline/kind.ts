/** Where baselines begin, in a database. */
import type { Kysely, Transaction } from 'kysely';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { defineKind } from '../../store/kind.ts';
import type { LoopBaselineRow, Tables } from '../../store/tables.ts';
import type { BaselineOperations, BaselineStart } from './contract.ts';

const TABLE = 'loop_baseline';

export const startOf = (row: LoopBaselineRow | undefined): BaselineStart => ({
  requestedFrom: row?.requested_from ?? null,
  changedAt: row?.changed_at ?? null,
});

const openBaselines =
  (db: Kysely<Tables>) =>
  (siteId: string): BaselineOperations => ({
    async get(loop) {
      const row = await db
        .selectFrom(TABLE)
        .selectAll()
        .where('site_id', '=', siteId)
        .where('loop_id', '=', loop)
        .executeTakeFirst();
      return startOf(row);
    },

    async request({ loop, from }) {
      const requested = { requested_from: from };
      const written = await unlessReferenceBroken(() =>
        db
          .insertInto(TABLE)
          .values({ site_id: siteId, loop_id: loop, changed_at: null, ...requested })
          .onConflict((conflict) => conflict.columns(['site_id', 'loop_id']).doUpdateSet(requested))
          .execute(),
      );
      return { outcome: written === undefined ? 'missing' : 'written' };
    },
  });

export const BASELINES = defineKind<BaselineOperations>({
  name: 'baseline',
  reads: { get: 'read-again' },
  open: openBaselines,
});

/** Marks that what the readings of some loops are compared with is another from now on; loops without readings compare nothing. */
export async function restartBaselines(
  all: Transaction<Tables>,
  {
    siteId,
    loops,
    now,
  }: { readonly siteId: string; readonly loops: readonly string[]; readonly now: number },
): Promise<void> {
  if (loops.length === 0) return;
  const read = await all
    .selectFrom('reading_series')
    .select('loop_id')
    .where('site_id', '=', siteId)
    .where('loop_id', 'in', loops)
    .where(({ exists, selectFrom }) =>
      exists(
        selectFrom('reading')
          .select('time')
          .whereRef('reading.series', '=', 'reading_series.series')
          .limit(1),
      ),
    )
    .execute();
  for (const { loop_id } of read) {
    await all
      .insertInto(TABLE)
      .values({ site_id: siteId, loop_id, requested_from: null, changed_at: now })
      .onConflict((conflict) => conflict.columns(['site_id', 'loop_id']).doUpdateSet({ changed_at: now }))
      .execute();
  }
}
