/** A site read and written as one whole in a database. */
import type { Kysely, Transaction } from 'kysely';
import type { SiteRecord } from '../../records/site/kind.ts';
import { siteColumns, siteRecord, siteRow, writeSiteTariff } from '../../records/site/kind.ts';
import { defineKind } from '../../store/kind.ts';
import type { Tables } from '../../store/tables.ts';
import {
  SITE_CHARACTERS_MAX,
  type SiteContents,
  type SiteContentsOperations,
  type TooManyRecords,
} from './contract.ts';
import type { RecordKind } from './kinds.ts';
import { RECORD_KINDS } from './kinds.ts';

const isKind = (name: string): name is RecordKind => Object.hasOwn(RECORD_KINDS, name);

const KINDS = Object.keys(RECORD_KINDS).filter(isKind);

async function tooMany(
  db: Kysely<Tables>,
  siteId: string,
  kinds: readonly RecordKind[],
): Promise<TooManyRecords | null> {
  let characters = 0;
  for (const kind of kinds) {
    const { most, count } = RECORD_KINDS[kind];
    const found = await count(db, siteId);
    if (found.records > most) return { outcome: 'too-many', kind, limit: most, actual: found.records };
    characters += found.characters;
  }
  if (characters <= SITE_CHARACTERS_MAX) return null;
  return { outcome: 'too-many', kind: 'characters', limit: SITE_CHARACTERS_MAX, actual: characters };
}

const writeKind = <Kind extends RecordKind>(
  all: Transaction<Tables>,
  kind: Kind,
  { siteId, contents }: { readonly siteId: string; readonly contents: SiteContents },
): Promise<void> => RECORD_KINDS[kind].write(all, siteId, contents.records[kind]);

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
async function writeAll(all: Transaction<Tables>, siteId: string, contents: SiteContents) {
  const site = await writeSite(all, siteId, contents.site);
  for (const kind of KINDS) await writeKind(all, kind, { siteId, contents });
  await writeSiteTariff(all, siteId, site.document.tariff);
  return { outcome: 'written', site } as const;
}

async function readAll(
  all: Transaction<Tables>,
  { siteId, readings }: { readonly siteId: string; readonly readings: boolean },
) {
  const many = await tooMany(all, siteId, readings ? KINDS : KINDS.filter((kind) => kind !== 'readings'));
  if (many !== null) return many;
  const records: SiteContents['records'] = {
    tariffs: await RECORD_KINDS.tariffs.read(all, siteId),
    pumps: await RECORD_KINDS.pumps.read(all, siteId),
    loops: await RECORD_KINDS.loops.read(all, siteId),
    schedules: await RECORD_KINDS.schedules.read(all, siteId),
    comparisons: await RECORD_KINDS.comparisons.read(all, siteId),
    upgradePlans: await RECORD_KINDS.upgradePlans.read(all, siteId),
    maintenanceTasks: await RECORD_KINDS.maintenanceTasks.read(all, siteId),
    completions: await RECORD_KINDS.completions.read(all, siteId),
    calibrations: await RECORD_KINDS.calibrations.read(all, siteId),
    readings: readings ? await RECORD_KINDS.readings.read(all, siteId) : [],
  };
  const site = siteRecord(await siteRow(all, siteId));
  return { outcome: 'read', contents: { site, records } } as const;
}

async function kindsThere(all: Transaction<Tables>, siteId: string): Promise<readonly RecordKind[]> {
  const there: RecordKind[] = [];
  for (const kind of KINDS) {
    const { records } = await RECORD_KINDS[kind].count(all, siteId);
    if (records > 0) there.push(kind);
  }
  return there;
}

const openContents =
  (db: Kysely<Tables>) =>
  (siteId: string): SiteContentsOperations => ({
    read: ({ readings }) =>
      db
        .transaction()
        .setIsolationLevel('repeatable read')
        .execute((all) => readAll(all, { siteId, readings })),

    write: (contents) =>
      db.transaction().execute(async (all) => {
        const kinds = await kindsThere(all, siteId);
        return kinds.length > 0 ? { outcome: 'not-empty', kinds } : await writeAll(all, siteId, contents);
      }),
  });

export const SITE_CONTENTS = defineKind<SiteContentsOperations>({
  name: 'site-contents',
  reads: { read: 'read-again' },
  open: openContents,
});
