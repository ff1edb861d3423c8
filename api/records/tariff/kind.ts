/** Tariffs in a database. */
import type { Kysely } from 'kysely';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import type { Place, Problem } from '../../http/problem.ts';
import { type DocumentOperations, documentTable } from '../../store/document-table.ts';
import { defineKind } from '../../store/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { Tables } from '../../store/tables.ts';
import { type InUse, type StoredRecord, USED_BY_LIMIT } from '../../store/versions.ts';
import { noRecord } from '../write-problems.ts';

export type TariffRecord = StoredRecord<Tariff>;

/** The site, then the loops whose schedules name the tariff. */
async function usersOf(db: Kysely<Tables>, siteId: string, id: string): Promise<InUse['usedBy']> {
  const sites = await db
    .selectFrom('site_tariff')
    .innerJoin('site', 'site.id', 'site_tariff.site_id')
    .select(['site.id', 'site.name'])
    .where('site_tariff.site_id', '=', siteId)
    .where('site_tariff.tariff_id', '=', id)
    .execute();
  const loops = await db
    .selectFrom('schedule')
    .innerJoin('loop', (join) =>
      join.onRef('loop.site_id', '=', 'schedule.site_id').onRef('loop.id', '=', 'schedule.id'),
    )
    .select(['loop.id', 'loop.name'])
    .where('schedule.site_id', '=', siteId)
    .where('schedule.tariff_id', '=', id)
    .orderBy('loop.created_at')
    .orderBy('loop.id')
    .limit(USED_BY_LIMIT)
    .execute();
  return [
    ...sites.map((site) => ({ kind: 'site', ...site }) as const),
    ...loops.map((loop) => ({ kind: 'schedule', ...loop }) as const),
  ].slice(0, USED_BY_LIMIT);
}

export const TARIFFS = defineKind<DocumentOperations<Tariff>>({
  name: 'tariff',
  reads: { get: 'read-again', list: 'read-again' },
  open: (db) => documentTable(db, 'tariff', (siteId, id) => usersOf(db, siteId, id)),
});

/** `place` is null where the id stands in the path. */
export async function findTariff(
  store: SiteStore,
  id: string,
  place: Place | null,
): Promise<Result<TariffRecord, Problem>> {
  const tariff = await store.of(TARIFFS).get(id);
  return tariff === undefined ? failed(noRecord('tariff', place)) : success(tariff);
}
