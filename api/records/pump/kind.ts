/** Pumps in a database. */
import type { Kysely } from 'kysely';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { PumpFit } from '../../../models/pump/pump-model.ts';
import type { Place, Problem } from '../../http/problem.ts';
import { isAlike } from '../../store/alike.ts';
import { DEFAULT_SITE_ID } from '../../store/default-site.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { pageOf, rowsToRead } from '../../store/page.ts';
import { parsedOnce } from '../../store/parsed-once.ts';
import { preparedRead } from '../../store/prepared-read.ts';
import { common } from '../../store/rows.ts';
import type { Store } from '../../store/store.ts';
import type { PumpRow, Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import {
  type ExpectedVersion,
  type RecordKey,
  type StoredRecord,
  USED_BY_LIMIT,
} from '../../store/versions.ts';
import { hasVersion, isRecord, mayBeOnPage } from '../../store/where-clauses.ts';
import { restartBaselines } from '../baseline/kind.ts';
import { tasksThatUse } from '../task/kind.ts';
import { noRecord } from '../write-problems.ts';

type PumpReads = Pick<Store, 'getPump' | 'getPumps' | 'listPumps' | 'allPumps'>;
type PumpWrites = Pick<Store, 'insertPump' | 'insertPumps' | 'replacePump' | 'deletePump'>;

const contentColumns = ({ document, fit }: Pick<NewPump, 'document' | 'fit'>) => {
  const texts = { document: jsonText(document), fit: jsonText(fit) };
  return { name: document.name, ...texts, digest: digestOf([texts.document, texts.fit]) };
};

/** The site's id, then the pumps'. */
const pumpsByIds =
  (db: Kysely<Tables>) =>
  ([siteId = '', ...ids]: readonly string[]) =>
    db.selectFrom('pump').selectAll().where('site_id', '=', siteId).where('id', 'in', ids);

export function pumpReads(db: Kysely<Tables>): PumpReads {
  const byIds = preparedRead(db, pumpsByIds(db));
  return {
    async getPump({ siteId, id }) {
      const [row] = await byIds([siteId, id]);
      return row === undefined ? undefined : pumpRecord(row);
    },

    async getPumps({ siteId, ids }) {
      const distinct = [...new Set(ids)];
      if (distinct.length > ALL_PUMPS_LIMIT)
        throw new Error(`invariant: ${distinct.length} pumps asked at once`);
      if (distinct.length === 0) return [];
      const rows = await byIds([siteId, ...distinct]);
      const byId = new Map(rows.map((row) => [row.id, pumpRecord(row)]));
      return distinct.flatMap((id) => byId.get(id) ?? []);
    },

    async listPumps(request) {
      const rows = await db
        .selectFrom('pump')
        .selectAll()
        .where(mayBeOnPage(request))
        .orderBy('created_at')
        .orderBy('id')
        .limit(rowsToRead(request.limit))
        .execute();
      return pageOf(rows, { limit: request.limit, read: pumpRecord });
    },

    async allPumps(siteId) {
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
  };
}

const loopsWith = (db: Kysely<Tables>, { siteId, id }: RecordKey) =>
  db.selectFrom('loop').where('site_id', '=', siteId).where('installed_pump_id', '=', id);

const loopsThatUse = (db: Kysely<Tables>, key: RecordKey) =>
  loopsWith(db, key)
    .select(['id', 'name'])
    .orderBy('created_at')
    .orderBy('id')
    .limit(USED_BY_LIMIT)
    .execute();

async function insertOne(db: Kysely<Tables>, { siteId, id, now, ...content }: NewPump): Promise<PumpRecord> {
  const row = await db
    .insertInto('pump')
    .values({
      site_id: siteId,
      id,
      version: 1,
      created_at: now,
      updated_at: now,
      ...contentColumns(content),
    })
    .returningAll()
    .executeTakeFirstOrThrow();
  return pumpRecord(row);
}

export const pumpWrites = (db: Kysely<Tables>): PumpWrites => ({
  insertPump: async (pump) => ({ outcome: 'inserted', record: await insertOne(db, pump) }),

  insertPumps: (pumps) =>
    db.transaction().execute(async (all) => {
      const records: PumpRecord[] = [];
      for (const pump of pumps) records.push(await insertOne(all, pump));
      return records;
    }),

  async replacePump({ siteId, id, now, expectedVersion, ...content }) {
    const row = await db.transaction().execute(async (all) => {
      const before = await all
        .selectFrom('pump')
        .select('fit')
        .where(isRecord({ siteId, id }))
        .executeTakeFirst();
      const after = await all
        .updateTable('pump')
        .set((eb) => ({ version: eb('version', '+', 1), updated_at: now, ...contentColumns(content) }))
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .returningAll()
        .executeTakeFirst();
      if (before !== undefined && after !== undefined && !isAlike(JSON.parse(before.fit), content.fit)) {
        const loops = await loopsWith(all, { siteId, id }).select('id').execute();
        await restartBaselines(all, { siteId, now, loops: loops.map((loop) => loop.id) });
      }
      return after;
    });
    if (row !== undefined) return { outcome: 'replaced', record: pumpRecord(row) };
    return await staleOrMissing(db, 'pump', { siteId, id });
  },

  async deletePump({ siteId, id, expectedVersion }) {
    const deletion = db.deleteFrom('pump').where(isRecord({ siteId, id })).where(hasVersion(expectedVersion));
    const result = await unlessReferenceBroken(() => deletion.executeTakeFirst());
    if (result === undefined) {
      const loops = (await loopsThatUse(db, { siteId, id })).map(
        (loop) => ({ kind: 'loop', ...loop }) as const,
      );
      const tasks = await tasksThatUse(db, { siteId, pump: id });
      return { outcome: 'in-use', usedBy: [...loops, ...tasks].slice(0, USED_BY_LIMIT) };
    }
    if (result.numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'pump', { siteId, id });
  },
});

/** The fit is read back bit for bit as it was written. */
export interface PumpRecord extends StoredRecord<Pump> {
  readonly fit: PumpFit;
}

export const pumpRecord = parsedOnce((row: PumpRow): PumpRecord => {
  checkDigest(row, 'pump', [row.document, row.fit]);
  const document: Pump = JSON.parse(row.document);
  const fit: PumpFit = JSON.parse(row.fit);
  return { ...common(row), document, fit };
});

export interface NewPump extends RecordKey {
  readonly document: Pump;
  readonly fit: PumpFit;
  readonly now: number;
}

export interface PumpReplacement extends NewPump {
  readonly expectedVersion: ExpectedVersion;
}

/** Every pump of a site, or how many there are when they are more than `ALL_PUMPS_LIMIT`. */

export type AllPumps =
  | { readonly outcome: 'all'; readonly records: readonly PumpRecord[] }
  | { readonly outcome: 'too-many'; readonly limit: number; readonly actual: number };
export const ALL_PUMPS_LIMIT = 10000;
export async function findPump(
  store: Store,
  id: string,
  place: Place | null,
): Promise<Result<PumpRecord, Problem>> {
  const pump = await store.getPump({ siteId: DEFAULT_SITE_ID, id });
  return pump === undefined ? failed(noRecord('pump', place)) : success(pump);
}
