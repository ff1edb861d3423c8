/** Tariffs in a database. */

import type { Kysely } from 'kysely';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import type { Place, Problem } from '../../http/problem.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import { type DocumentOperations, documentTable } from '../../store/document-table.ts';
import { unlessKeyTaken } from '../../store/keys.ts';
import { defineKind } from '../../store/kind.ts';
import { recordReference } from '../../store/record-reference.ts';
import type { SiteStore } from '../../store/store.ts';
import type { Tables } from '../../store/tables.ts';
import { type InUse, type KeyTaken, type StoredRecord, USED_BY_LIMIT } from '../../store/versions.ts';

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
    .select(['loop.id', 'loop.key', 'loop.name'])
    .where('schedule.site_id', '=', siteId)
    .where('schedule.tariff_id', '=', id)
    .orderBy('loop.created_at')
    .orderBy('loop.id')
    .limit(USED_BY_LIMIT)
    .execute();
  return [
    ...sites.map((site) => ({ kind: 'site', ...site }) as const),
    ...loops.map((loop) => ({ kind: 'schedule', ...recordReference(loop) }) as const),
  ].slice(0, USED_BY_LIMIT);
}

type Documents = DocumentOperations<Tariff>;
type Written<Name extends 'insert' | 'replace'> = (
  ...asked: Parameters<Documents[Name]>
) => Promise<Awaited<ReturnType<Documents[Name]>> | KeyTaken>;

interface TariffOperations extends Omit<Documents, 'insert' | 'replace'> {
  readonly insert: Written<'insert'>;
  readonly replace: Written<'replace'>;
}

function openTariffs(db: Kysely<Tables>): (siteId: string) => TariffOperations {
  const open = documentTable<Tariff>(db, 'tariff', (siteId, id) => usersOf(db, siteId, id));
  return (siteId) => {
    const documents = open(siteId);
    const named = (key: string | null | undefined) => ({ siteId, table: 'tariff', key }) as const;
    return {
      ...documents,
      insert: (tariff) => unlessKeyTaken(db, named(tariff.key), () => documents.insert(tariff)),
      replace: (tariff) => unlessKeyTaken(db, named(tariff.key), () => documents.replace(tariff)),
    };
  };
}

export const TARIFFS = defineKind<TariffOperations>({
  name: 'tariff',
  reads: { get: 'read-again', list: 'read-again' },
  open: openTariffs,
});

/** `place` is null where the id stands in the path. */
export async function findTariff(
  store: SiteStore,
  id: string,
  place: Place | null,
): Promise<Result<TariffRecord, Problem>> {
  const tariff = await store.of(TARIFFS).get(id);
  return tariff === undefined
    ? failed(await unknownRecord(store, { noun: 'tariff', name: id, place }))
    : success(tariff);
}
