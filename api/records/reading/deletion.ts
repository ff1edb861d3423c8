/** Readings taken out of a database: all of a stretch of time in one transaction. */
import type { Kysely, Transaction } from 'kysely';
import type { Tables } from '../../store/tables.ts';
import type { InSite } from '../../store/versions.ts';
import { isChosen } from './chosen.ts';
import { READINGS_DELETED_MAX, type ReadingChoice, type ReadingOperations } from './contract.ts';

/** Loops without readings have no series: there is nothing to delete. */
async function deleteChosen(all: Transaction<Tables>, choice: ReadingChoice & InSite) {
  const known = await all
    .updateTable('reading_series')
    .set((eb) => ({ changes: eb('changes', '+', 1) }))
    .where('site_id', '=', choice.siteId)
    .where('loop_id', '=', choice.loop)
    .returning('series')
    .executeTakeFirst();
  if (known === undefined) return { outcome: 'deleted', readings: 0 } as const;
  const chosen = isChosen(known.series, choice);
  const { count } = await all
    .selectFrom('reading')
    .select(({ fn }) => fn.countAll<number | string>().as('count'))
    .where(chosen)
    .executeTakeFirstOrThrow();
  const actual = Number(count);
  if (actual > READINGS_DELETED_MAX) {
    return { outcome: 'too-many', limit: READINGS_DELETED_MAX, actual } as const;
  }
  await all.deleteFrom('reading_outlet').where(chosen).execute();
  await all.deleteFrom('reading').where(chosen).execute();
  return { outcome: 'deleted', readings: actual } as const;
}

export const readingDeletion = (db: Kysely<Tables>, siteId: string): Pick<ReadingOperations, 'delete'> => ({
  delete: (choice) => db.transaction().execute((all) => deleteChosen(all, { ...choice, siteId })),
});
