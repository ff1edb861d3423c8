/** Loops in a database. */
import type { Kysely } from 'kysely';
import type { Loop } from '../../models/loop.ts';
import { type CalibrationColumns, hydraulicsDigest, NO_CALIBRATION } from './calibration-text.ts';
import { hasVersion, isRecord, mayBeOnPage } from './conditions.ts';
import { unlessReferenceBroken } from './foreign-key-violation.ts';
import { digestOf, jsonText } from './json-text.ts';
import { tasksThatUse } from './maintenance-task-store.ts';
import { pageOf, rowsToRead } from './page.ts';
import { preparedRead } from './prepared-read.ts';
import { loopRecord } from './record.ts';
import type { Tables } from './schema.ts';
import type { Store } from './store.ts';
import type { UnknownPump } from './stored.ts';
import { staleOrMissing } from './version-check.ts';

type LoopReads = Pick<Store, 'getLoop' | 'listLoops'>;
type LoopWrites = Pick<Store, 'insertLoop' | 'replaceLoop' | 'deleteLoop'>;

const contentColumns = (document: Loop) => {
  const text = jsonText(document);
  return {
    name: document.name,
    document: text,
    digest: digestOf([text]),
    installed_pump_id: document.installed?.pump ?? null,
  };
};

function unknownPump({ installed }: Loop): UnknownPump {
  // Without an installed pump only the site can be what is not there, and a caller's site is always there.
  if (installed === undefined) throw new Error('invariant: a loop was written to a site that is not there');
  return { outcome: 'unknown-pump', pumpId: installed.pump };
}

export function loopReads(db: Kysely<Tables>): LoopReads {
  const byKey = preparedRead(db, ([siteId = '', id = '']) =>
    db.selectFrom('loop').selectAll().where(isRecord({ siteId, id })),
  );
  return {
    async getLoop({ siteId, id }) {
      const [row] = await byKey([siteId, id]);
      return row === undefined ? undefined : loopRecord(row);
    },

    async listLoops(request) {
      const { installedPump } = request;
      const onPage = db.selectFrom('loop').selectAll().where(mayBeOnPage(request));
      const asked =
        installedPump === undefined ? onPage : onPage.where('installed_pump_id', '=', installedPump);
      const rows = await asked.orderBy('created_at').orderBy('id').limit(rowsToRead(request.limit)).execute();
      return pageOf(rows, { limit: request.limit, read: loopRecord });
    },
  };
}

export const loopWrites = (db: Kysely<Tables>): LoopWrites => ({
  async insertLoop({ siteId, id, document, now }) {
    const insertion = db
      .insertInto('loop')
      .values({
        site_id: siteId,
        id,
        version: 1,
        created_at: now,
        updated_at: now,
        ...contentColumns(document),
        ...NO_CALIBRATION,
      })
      .returningAll();
    const row = await unlessReferenceBroken(() => insertion.executeTakeFirstOrThrow());
    return row === undefined ? unknownPump(document) : { outcome: 'inserted', record: loopRecord(row) };
  },

  async replaceLoop({ siteId, id, document, now, expectedVersion }) {
    const update = db
      .updateTable('loop')
      .set((eb) => {
        const isAbout = eb('calibration_of', '=', hydraulicsDigest(document));
        const keptIfAbout = (column: keyof CalibrationColumns) =>
          eb.case().when(isAbout).then(eb.ref(column)).else(null).end();
        return {
          version: eb('version', '+', 1),
          updated_at: now,
          ...contentColumns(document),
          // What is written of one row is read as it was before the statement, whatever the order.
          calibration: keptIfAbout('calibration'),
          calibration_digest: keptIfAbout('calibration_digest'),
          calibration_of: keptIfAbout('calibration_of'),
        };
      })
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .returningAll();
    const rows = await unlessReferenceBroken(() => update.execute());
    if (rows === undefined) return unknownPump(document);
    const [row] = rows;
    if (row !== undefined) return { outcome: 'replaced', record: loopRecord(row) };
    return await staleOrMissing(db, 'loop', { siteId, id });
  },

  async deleteLoop({ siteId, id, expectedVersion }) {
    const deletion = db.deleteFrom('loop').where(isRecord({ siteId, id })).where(hasVersion(expectedVersion));
    const result = await unlessReferenceBroken(() => deletion.executeTakeFirst());
    if (result === undefined) {
      return { outcome: 'in-use', usedBy: await tasksThatUse(db, { siteId, loop: id }) };
    }
    if (result.numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'loop', { siteId, id });
  },
});
