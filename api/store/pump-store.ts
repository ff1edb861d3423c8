/** Pumps in a database. */
import type { Kysely } from 'kysely';
import { hasVersion, isRecord, mayBeOnPage } from './conditions.ts';
import { unlessReferenceBroken } from './foreign-key-violation.ts';
import { digestOf, jsonText } from './json-text.ts';
import { tasksThatUse } from './maintenance-task-store.ts';
import { pageOf, rowsToRead } from './page.ts';
import { preparedRead } from './prepared-read.ts';
import { pumpRecord } from './record.ts';
import type { Tables } from './schema.ts';
import { ALL_PUMPS_LIMIT, type NewPump, type PumpRecord, type Store } from './store.ts';
import { type RecordKey, USED_BY_LIMIT } from './stored.ts';
import { staleOrMissing } from './version-check.ts';

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

const loopsThatUse = (db: Kysely<Tables>, { siteId, id }: RecordKey) =>
  db
    .selectFrom('loop')
    .select(['id', 'name'])
    .where('site_id', '=', siteId)
    .where('installed_pump_id', '=', id)
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
    const row = await db
      .updateTable('pump')
      .set((eb) => ({ version: eb('version', '+', 1), updated_at: now, ...contentColumns(content) }))
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .returningAll()
      .executeTakeFirst();
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
