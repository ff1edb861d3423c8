/** Why a write that names a version met no row. */
import type { Kysely } from 'kysely';
import type { RecordTable, Tables } from './tables.ts';
import type { Missing, RecordKey, Stale } from './versions.ts';
import { isRecord } from './where-clauses.ts';

/** Asked after the compare-and-set, so it explains the refusal and decides nothing. */
export async function staleOrMissing(
  db: Kysely<Tables>,
  table: RecordTable,
  key: RecordKey,
): Promise<Stale | Missing> {
  const row = await db.selectFrom(table).select('version').where(isRecord(key)).executeTakeFirst();
  return row === undefined ? { outcome: 'missing' } : { outcome: 'stale', version: row.version };
}
