/** Pumps in a database. */

import type { Kysely } from 'kysely';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { PumpFit } from '../../../models/pump/pump-model.ts';
import type { Place, Problem } from '../../http/problem.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { unlessKeyTaken } from '../../store/keys.ts';
import { defineKind } from '../../store/kind.ts';
import { pageOf, rowsToRead } from '../../store/page.ts';
import { parsedOnce } from '../../store/parsed-once.ts';
import { preparedRead } from '../../store/prepared-read.ts';
import { recordReference } from '../../store/record-reference.ts';
import { common } from '../../store/rows.ts';
import type { SiteStore } from '../../store/store.ts';
import type { PumpRow, Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import {
  type Deleted,
  type Deletion,
  type Inserted,
  type InUse,
  type KeyTaken,
  type Missing,
  type NewRecord,
  type Page,
  type PageRequest,
  type RecordKey,
  type Replaced,
  type Replacement,
  type Stale,
  type StoredRecord,
  USED_BY_LIMIT,
} from '../../store/versions.ts';
import { hasVersion, isRecord, keyColumn, mayBeOnPage } from '../../store/where-clauses.ts';
import { tasksThatUse } from '../task/kind.ts';

/** The fit is read back bit for bit as it was written. */
export interface PumpRecord extends StoredRecord<Pump> {
  readonly fit: PumpFit;
}

interface FittedDocument {
  readonly document: Pump;
  readonly fit: PumpFit;
}

/** Every pump of a site, or how many there are when they are more than `ALL_PUMPS_LIMIT`. */
type AllPumps =
  | { readonly outcome: 'all'; readonly records: readonly PumpRecord[] }
  | { readonly outcome: 'too-many'; readonly limit: number; readonly actual: number };

export const ALL_PUMPS_LIMIT = 10_000;

interface PumpOperations {
  insert(pump: NewRecord<Pump> & FittedDocument): Promise<Inserted<PumpRecord> | KeyTaken>;
  /** All of them or none, in their order; `place` is that of the pump whose key is taken. */
  insertAll(
    pumps: readonly (NewRecord<Pump> & FittedDocument)[],
  ): Promise<
    | { readonly outcome: 'inserted'; readonly records: readonly PumpRecord[] }
    | (KeyTaken & { readonly place: number })
  >;
  get(id: string): Promise<PumpRecord | undefined>;
  /** Those of the ids that exist, in the order of the ids; at most `ALL_PUMPS_LIMIT` ids. */
  some(ids: readonly string[]): Promise<readonly PumpRecord[]>;
  list(request: PageRequest): Promise<Page<PumpRecord>>;
  /** In the order createdAt, then id. */
  all(): Promise<AllPumps>;
  replace(
    replacement: Replacement<Pump> & FittedDocument,
  ): Promise<Replaced<PumpRecord> | Stale | Missing | KeyTaken>;
  delete(deletion: Deletion): Promise<Deleted | Stale | Missing | InUse>;
}

export const pumpRecord = parsedOnce((row: PumpRow): PumpRecord => {
  checkDigest(row, 'pump', [row.document, row.fit]);
  const document: Pump = JSON.parse(row.document);
  const fit: PumpFit = JSON.parse(row.fit);
  return { ...common(row), document, fit };
});

const contentColumns = ({ document, fit }: FittedDocument) => {
  const texts = { document: jsonText(document), fit: jsonText(fit) };
  return { name: document.name, ...texts, digest: digestOf([texts.document, texts.fit]) };
};

/** The site's id, then the pumps'. */
const pumpsByIds =
  (db: Kysely<Tables>) =>
  ([siteId = '', ...ids]: readonly string[]) =>
    db.selectFrom('pump').selectAll().where('site_id', '=', siteId).where('id', 'in', ids);

type PumpReads = Pick<PumpOperations, 'get' | 'some' | 'list' | 'all'>;

function pumpReads(db: Kysely<Tables>): (siteId: string) => PumpReads {
  const byIds = preparedRead(db, pumpsByIds(db));
  return (siteId) => ({
    async get(id) {
      const [row] = await byIds([siteId, id]);
      return row === undefined ? undefined : pumpRecord(row);
    },

    async some(ids) {
      const distinct = [...new Set(ids)];
      if (distinct.length > ALL_PUMPS_LIMIT)
        throw new Error(`invariant: ${distinct.length} pumps asked at once`);
      if (distinct.length === 0) return [];
      const rows = await byIds([siteId, ...distinct]);
      const byId = new Map(rows.map((row) => [row.id, pumpRecord(row)]));
      return distinct.flatMap((id) => byId.get(id) ?? []);
    },

    async list(request) {
      const rows = await db
        .selectFrom('pump')
        .selectAll()
        .where(mayBeOnPage({ siteId, ...request }))
        .orderBy('created_at')
        .orderBy('id')
        .limit(rowsToRead(request.limit))
        .execute();
      return pageOf(rows, { limit: request.limit, read: pumpRecord });
    },

    async all() {
      const { actual } = await db
        .selectFrom('pump')
        .select((eb) => eb.fn.countAll<number | string>().as('actual'))
        .where('site_id', '=', siteId)
        .executeTakeFirstOrThrow();
      const count = Number(actual);
      if (count > ALL_PUMPS_LIMIT) return { outcome: 'too-many', limit: ALL_PUMPS_LIMIT, actual: count };
      const rows = await db
        .selectFrom('pump')
        .selectAll()
        .where('site_id', '=', siteId)
        .orderBy('created_at')
        .orderBy('id')
        .limit(ALL_PUMPS_LIMIT)
        .execute();
      return { outcome: 'all', records: rows.map(pumpRecord) };
    },
  });
}

const loopsThatUse = (db: Kysely<Tables>, { siteId, id }: RecordKey) =>
  db
    .selectFrom('loop')
    .select(['id', 'key', 'name'])
    .where('site_id', '=', siteId)
    .where('installed_pump_id', '=', id)
    .orderBy('created_at')
    .orderBy('id')
    .limit(USED_BY_LIMIT)
    .execute();

async function insertOne(
  db: Kysely<Tables>,
  siteId: string,
  { id, now, key, ...content }: NewRecord<Pump> & FittedDocument,
): Promise<PumpRecord> {
  const row = await db
    .insertInto('pump')
    .values({
      site_id: siteId,
      id,
      version: 1,
      created_at: now,
      updated_at: now,
      ...contentColumns(content),
      ...keyColumn(key),
    })
    .returningAll()
    .executeTakeFirstOrThrow();
  return pumpRecord(row);
}

const pumpWrites = (db: Kysely<Tables>, siteId: string): Omit<PumpOperations, keyof PumpReads> => ({
  insert: (pump) =>
    unlessKeyTaken(db, { siteId, table: 'pump', key: pump.key }, async () => ({
      outcome: 'inserted',
      record: await insertOne(db, siteId, pump),
    })),

  async insertAll(pumps) {
    let place = 0;
    const written = await unlessKeyTaken(db, { siteId, table: 'pump', key: () => pumps[place]?.key }, () =>
      db.transaction().execute(async (all) => {
        const records: PumpRecord[] = [];
        for (const pump of pumps) {
          place = records.length;
          records.push(await insertOne(all, siteId, pump));
        }
        return { outcome: 'inserted', records } as const;
      }),
    );
    return written.outcome === 'inserted' ? written : { ...written, place };
  },

  replace: (replacement) =>
    unlessKeyTaken(db, { siteId, table: 'pump', key: replacement.key }, async () => {
      const { id, now, key, expectedVersion, ...content } = replacement;
      const row = await db
        .updateTable('pump')
        .set((eb) => ({
          version: eb('version', '+', 1),
          updated_at: now,
          ...contentColumns(content),
          ...keyColumn(key),
        }))
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .returningAll()
        .executeTakeFirst();
      if (row !== undefined) return { outcome: 'replaced', record: pumpRecord(row) };
      return await staleOrMissing(db, 'pump', { siteId, id });
    }),

  async delete({ id, expectedVersion }) {
    const deletion = db.deleteFrom('pump').where(isRecord({ siteId, id })).where(hasVersion(expectedVersion));
    const result = await unlessReferenceBroken(() => deletion.executeTakeFirst());
    if (result === undefined) {
      const loops = (await loopsThatUse(db, { siteId, id })).map(
        (loop) => ({ kind: 'loop', ...recordReference(loop) }) as const,
      );
      const tasks = await tasksThatUse(db, { siteId, pump: id });
      return { outcome: 'in-use', usedBy: [...loops, ...tasks].slice(0, USED_BY_LIMIT) };
    }
    if (result.numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'pump', { siteId, id });
  },
});

function openPumps(db: Kysely<Tables>): (siteId: string) => PumpOperations {
  const reads = pumpReads(db);
  return (siteId) => ({ ...reads(siteId), ...pumpWrites(db, siteId) });
}

export const PUMPS = defineKind<PumpOperations>({
  name: 'pump',
  reads: { get: 'remembered', some: 'read-again', list: 'read-again', all: 'read-again' },
  open: openPumps,
});

/** `place` is null where the id stands in the path. */
export async function findPump(
  store: SiteStore,
  id: string,
  place: Place | null,
): Promise<Result<PumpRecord, Problem>> {
  const pump = await store.of(PUMPS).get(id);
  return pump === undefined
    ? failed(await unknownRecord(store, { noun: 'pump', name: id, place }))
    : success(pump);
}

/** More pumps than these are read at once, past the memory of records, which they would fill. */
const FEW = 50;

/** Those of the ids that exist, in the order of the ids. */
export async function findPumps(store: SiteStore, ids: readonly string[]): Promise<readonly PumpRecord[]> {
  const { get, some } = store.of(PUMPS);
  const distinct = [...new Set(ids)];
  if (distinct.length > FEW) return await some(distinct);
  const found = await Promise.all(distinct.map((id) => get(id)));
  return found.filter((pump) => pump !== undefined);
}
