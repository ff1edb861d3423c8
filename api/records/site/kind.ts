/** Sites in a database. */
import type { Kysely, Transaction } from 'kysely';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { defineKind } from '../../store/kind.ts';
import { parsedOnce } from '../../store/parsed-once.ts';
import { preparedRead } from '../../store/prepared-read.ts';
import { common } from '../../store/rows.ts';
import type { SiteStore } from '../../store/store.ts';
import type { RowCommon, Tables } from '../../store/tables.ts';
import type {
  ExpectedVersion,
  Missing,
  Replaced,
  Stale,
  StoredRecord,
  UnknownTariff,
} from '../../store/versions.ts';
import { hasVersion } from '../../store/where-clauses.ts';

/** A facility: `elevation` in m, `price` in money per kWh, `labourRate` in money per hour. */
export interface Site {
  readonly name: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly elevation: number;
  readonly price: number | null;
  readonly labourRate: number | null;
  /** Id of the tariff that prices go by where nothing else is stated. */
  readonly tariff: string | null;
}

export type SiteRecord = StoredRecord<Site>;

interface SiteOperations {
  get(): Promise<SiteRecord | undefined>;
  /** Makes the site if it is not there, and leaves it alone if it is. */
  ensure(site: { readonly document: Site; readonly now: number }): Promise<SiteRecord>;
  replace(replacement: {
    readonly document: Site;
    readonly now: number;
    readonly expectedVersion: ExpectedVersion;
  }): Promise<Replaced<SiteRecord> | Stale | Missing | UnknownTariff>;
}

export const siteColumns = (document: Site) => {
  const text = jsonText(document);
  return { name: document.name, document: text, digest: digestOf([text]) };
};

/** Of a site that is there. */
export const siteRow = (db: Kysely<Tables>, siteId: string): Promise<RowCommon> =>
  db.selectFrom('site').selectAll().where('id', '=', siteId).executeTakeFirstOrThrow();

export async function writeSiteTariff(
  all: Transaction<Tables>,
  siteId: string,
  tariffId: string | null,
): Promise<void> {
  await all.deleteFrom('site_tariff').where('site_id', '=', siteId).execute();
  if (tariffId === null) return;
  await all.insertInto('site_tariff').values({ site_id: siteId, tariff_id: tariffId }).execute();
}

// The digest proves that a text is the one made from a value of the type, so parsing gives that type back.
export const siteRecord = parsedOnce((row: RowCommon): SiteRecord => {
  checkDigest(row, 'site', [row.document]);
  const document: Site = JSON.parse(row.document);
  return { ...common(row), document };
});

function openSite(db: Kysely<Tables>): (siteId: string) => SiteOperations {
  const byId = preparedRead(db, ([siteId = '']) =>
    db.selectFrom('site').selectAll().where('id', '=', siteId),
  );
  const findRow = async (siteId: string) => (await byId([siteId]))[0];

  return (siteId) => ({
    async get() {
      const row = await findRow(siteId);
      return row === undefined ? undefined : siteRecord(row);
    },

    async ensure({ document, now }) {
      await db
        .insertInto('site')
        .values({ id: siteId, version: 1, created_at: now, updated_at: now, ...siteColumns(document) })
        .onConflict((conflict) => conflict.column('id').doNothing())
        .execute();
      const row = await findRow(siteId);
      if (row === undefined) throw new Error(`invariant: site ${siteId} is not there after it was made`);
      return siteRecord(row);
    },

    async replace({ document, now, expectedVersion }) {
      const rows = await unlessReferenceBroken(() =>
        db.transaction().execute(async (all) => {
          const updated = await all
            .updateTable('site')
            .set((eb) => ({ version: eb('version', '+', 1), updated_at: now, ...siteColumns(document) }))
            .where('id', '=', siteId)
            .where(hasVersion(expectedVersion))
            .returningAll()
            .execute();
          if (updated.length > 0) await writeSiteTariff(all, siteId, document.tariff);
          return updated;
        }),
      );
      if (rows === undefined) return { outcome: 'unknown-tariff' };
      const [row] = rows;
      if (row !== undefined) return { outcome: 'replaced', record: siteRecord(row) };
      const current = await findRow(siteId);
      return current === undefined ? { outcome: 'missing' } : { outcome: 'stale', version: current.version };
    },
  });
}

/** The facility itself, of which a site has one. */
export const SITE = defineKind<SiteOperations>({
  name: 'site',
  reads: { get: 'remembered' },
  open: openSite,
});

export const defaultSite = (currency: string): Site => ({
  name: 'Site',
  timeZone: 'UTC',
  currency,
  elevation: 0,
  price: null,
  labourRate: null,
  tariff: null,
});

export async function findSite(store: SiteStore): Promise<SiteRecord> {
  const site = await store.of(SITE).get();
  if (site === undefined) throw new Error('invariant: the site is made when the service starts');
  return site;
}
