/** A site read and written as one whole in a database. */
import type { Kysely, Transaction } from 'kysely';
import { isRecord } from './conditions.ts';
import { siteRecord } from './record.ts';
import { RECORD_KINDS } from './record-kinds.ts';
import type { Tables } from './schema.ts';
import {
  type KindsOfRecords,
  type NewSiteContents,
  RECORDS_OF_A_KIND_MAX,
  type RecordKind,
  type SiteContents,
  type SiteContentsStore,
  type TooManyRecords,
} from './site-contents-contract.ts';
import { siteColumns, siteRow, writeSiteTariff } from './site-store.ts';
import type { SiteRecord } from './store.ts';

const isKind = (name: string): name is RecordKind => Object.hasOwn(RECORD_KINDS, name);

const KINDS = Object.keys(RECORD_KINDS).filter(isKind);

async function countOf(db: Kysely<Tables>, siteId: string, kind: RecordKind): Promise<number> {
  const { actual } = await db
    .selectFrom(RECORD_KINDS[kind].table)
    .select((eb) => eb.fn.countAll<number | string>().as('actual'))
    .where('site_id', '=', siteId)
    .executeTakeFirstOrThrow();
  return Number(actual);
}

async function tooMany(db: Kysely<Tables>, siteId: string): Promise<TooManyRecords | null> {
  for (const kind of KINDS) {
    const actual = await countOf(db, siteId, kind);
    if (actual > RECORDS_OF_A_KIND_MAX)
      return { outcome: 'too-many', kind, limit: RECORDS_OF_A_KIND_MAX, actual };
  }
  return null;
}

async function writeKind<Kind extends RecordKind>(
  all: Transaction<Tables>,
  kind: Kind,
  { siteId, records }: { siteId: string; records: readonly (() => KindsOfRecords[Kind])[] },
): Promise<void> {
  const { table, insert } = RECORD_KINDS[kind];
  for (const make of records) {
    const record = make();
    const { outcome } = await insert(all, siteId, record);
    if (outcome !== 'inserted')
      throw new Error(`invariant: ${kind} ${record.id} was not written: ${outcome}`);
    await all
      .updateTable(table)
      .set({ version: record.version, updated_at: record.updatedAt })
      .where(isRecord({ siteId, id: record.id }))
      .execute();
  }
}

/** The version goes on from where it is, so that what anyone knows of the site before is stale. */
async function writeSite(all: Transaction<Tables>, siteId: string, site: SiteRecord): Promise<SiteRecord> {
  const current = await siteRow(all, siteId);
  const row = await all
    .updateTable('site')
    .set({
      version: Math.max(current.version + 1, site.version),
      created_at: site.createdAt,
      updated_at: site.updatedAt,
      ...siteColumns(site.document),
    })
    .where('id', '=', siteId)
    .returningAll()
    .executeTakeFirstOrThrow();
  return siteRecord(row);
}

/** The site's row first: of two who write at once, the second waits for it and then finds the records of the first. */
async function writeAll(all: Transaction<Tables>, { siteId, contents }: NewSiteContents) {
  const site = await writeSite(all, siteId, contents.site);
  const { records } = contents;
  await writeKind(all, 'tariffs', { siteId, records: records.tariffs });
  await writeKind(all, 'pumps', { siteId, records: records.pumps });
  await writeKind(all, 'loops', { siteId, records: records.loops });
  await writeKind(all, 'schedules', { siteId, records: records.schedules });
  await writeSiteTariff(all, siteId, site.document.tariff);
  return { outcome: 'written', site } as const;
}

export const siteContentsStore = (db: Kysely<Tables>): SiteContentsStore => ({
  readContents: (siteId) =>
    db
      .transaction()
      .setIsolationLevel('repeatable read')
      .execute(async (all) => {
        const many = await tooMany(all, siteId);
        if (many !== null) return many;
        const records: SiteContents['records'] = {
          tariffs: await RECORD_KINDS.tariffs.read(all, siteId),
          pumps: await RECORD_KINDS.pumps.read(all, siteId),
          loops: await RECORD_KINDS.loops.read(all, siteId),
          schedules: await RECORD_KINDS.schedules.read(all, siteId),
        };
        return {
          outcome: 'read',
          contents: { site: siteRecord(await siteRow(all, siteId)), records },
        } as const;
      }),

  writeContents: (written) =>
    db.transaction().execute(async (all) => {
      const kinds: RecordKind[] = [];
      for (const kind of KINDS) if ((await countOf(all, written.siteId, kind)) > 0) kinds.push(kind);
      return kinds.length > 0 ? { outcome: 'not-empty', kinds } : await writeAll(all, written);
    }),
});
