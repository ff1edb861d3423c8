/** Tariffs in a database. */
import type { Kysely } from 'kysely';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import type { Place, Problem } from '../../http/problem.ts';
import { DEFAULT_SITE_ID } from '../../store/default-site.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { pageOf, rowsToRead } from '../../store/page.ts';
import { common } from '../../store/rows.ts';
import type { Store } from '../../store/store.ts';
import type { Tables, TariffRow } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import {
  type ExpectedVersion,
  type InUse,
  type RecordKey,
  type StoredRecord,
  USED_BY_LIMIT,
} from '../../store/versions.ts';
import { hasVersion, isRecord, mayBeOnPage } from '../../store/where-clauses.ts';
import { noRecord } from '../write-problems.ts';

type TariffReads = Pick<Store, 'getTariff' | 'listTariffs'>;
type TariffWrites = Pick<Store, 'insertTariff' | 'replaceTariff' | 'deleteTariff'>;

const contentColumns = (document: Tariff) => {
  const text = jsonText(document);
  return { name: document.name, document: text, digest: digestOf([text]) };
};

export const tariffReads = (db: Kysely<Tables>): TariffReads => ({
  async getTariff(key) {
    const row = await db.selectFrom('tariff').selectAll().where(isRecord(key)).executeTakeFirst();
    return row === undefined ? undefined : tariffRecord(row);
  },

  async listTariffs(request) {
    const rows = await db
      .selectFrom('tariff')
      .selectAll()
      .where(mayBeOnPage(request))
      .orderBy('created_at')
      .orderBy('id')
      .limit(rowsToRead(request.limit))
      .execute();
    return pageOf(rows, { limit: request.limit, read: tariffRecord });
  },
});

/** The site, then the loops whose schedules name the tariff. */
async function usersOf(db: Kysely<Tables>, { siteId, id }: RecordKey): Promise<InUse['usedBy']> {
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

export const tariffWrites = (db: Kysely<Tables>): TariffWrites => ({
  async insertTariff({ siteId, id, document, now }) {
    const row = await db
      .insertInto('tariff')
      .values({
        site_id: siteId,
        id,
        version: 1,
        created_at: now,
        updated_at: now,
        ...contentColumns(document),
      })
      .returningAll()
      .executeTakeFirstOrThrow();
    return { outcome: 'inserted', record: tariffRecord(row) };
  },

  async replaceTariff({ siteId, id, document, now, expectedVersion }) {
    const row = await db
      .updateTable('tariff')
      .set((eb) => ({ version: eb('version', '+', 1), updated_at: now, ...contentColumns(document) }))
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .returningAll()
      .executeTakeFirst();
    if (row !== undefined) return { outcome: 'replaced', record: tariffRecord(row) };
    return await staleOrMissing(db, 'tariff', { siteId, id });
  },

  async deleteTariff({ siteId, id, expectedVersion }) {
    const deletion = db
      .deleteFrom('tariff')
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion));
    const result = await unlessReferenceBroken(() => deletion.executeTakeFirst());
    if (result === undefined) return { outcome: 'in-use', usedBy: await usersOf(db, { siteId, id }) };
    if (result.numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'tariff', { siteId, id });
  },
});

export type TariffRecord = StoredRecord<Tariff>;
export function tariffRecord(row: TariffRow): TariffRecord {
  checkDigest(row, 'tariff', [row.document]);
  const document: Tariff = JSON.parse(row.document);
  return { ...common(row), document };
}

export interface NewTariff extends RecordKey {
  readonly document: Tariff;
  readonly now: number;
}

export interface TariffReplacement extends NewTariff {
  readonly expectedVersion: ExpectedVersion;
}

export async function findTariff(
  store: Store,
  id: string,
  place: Place | null,
): Promise<Result<TariffRecord, Problem>> {
  const tariff = await store.getTariff({ siteId: DEFAULT_SITE_ID, id });
  return tariff === undefined ? failed(noRecord('tariff', place)) : success(tariff);
}
