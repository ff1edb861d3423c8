/** Loops in a database. */
import type { Kysely } from 'kysely';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { AppliedCalibration } from '../../../models/calibration/applied.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { Place, Problem } from '../../http/problem.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import { unlessReferenceBroken } from '../../store/foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { unlessKeyTaken } from '../../store/keys.ts';
import { defineKind } from '../../store/kind.ts';
import { pageOf, rowsToRead } from '../../store/page.ts';
import { parsedOnce } from '../../store/parsed-once.ts';
import { preparedRead } from '../../store/prepared-read.ts';
import { common } from '../../store/rows.ts';
import type { SiteStore } from '../../store/store.ts';
import type { LoopRow, Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import type {
  Deleted,
  Deletion,
  Inserted,
  InUse,
  KeyTaken,
  Missing,
  NewRecord,
  Page,
  PageRequest,
  Replaced,
  Replacement,
  Stale,
  StoredRecord,
  UnknownPump,
} from '../../store/versions.ts';
import { hasVersion, isRecord, keyColumn, mayBeOnPage } from '../../store/where-clauses.ts';
import { tasksThatUse } from '../task/kind.ts';
import {
  type CalibrationColumns,
  calibrationOf,
  hydraulicsDigest,
  NO_CALIBRATION,
} from './calibration-column.ts';

/** The document is as entered; what is computed on the loop rests on its calibration, where it has one. */
export interface LoopRecord extends StoredRecord<Loop> {
  readonly calibration: AppliedCalibration | null;
}

interface LoopPageRequest extends PageRequest {
  /** Only loops that have this pump installed. */
  readonly installedPump?: string | undefined;
}

/** The installed pump is taken from `document.installed`. */
interface LoopOperations {
  insert(loop: NewRecord<Loop>): Promise<Inserted<LoopRecord> | UnknownPump | KeyTaken>;
  get(id: string): Promise<LoopRecord | undefined>;
  list(request: LoopPageRequest): Promise<Page<LoopRecord>>;
  count(): Promise<number>;
  replace(
    replacement: Replacement<Loop>,
  ): Promise<Replaced<LoopRecord> | Stale | Missing | UnknownPump | KeyTaken>;
  delete(deletion: Deletion): Promise<Deleted | Stale | Missing | InUse>;
}

export const loopRecord = parsedOnce((row: LoopRow): LoopRecord => {
  checkDigest(row, 'loop', [row.document]);
  const document: Loop = JSON.parse(row.document);
  const { calibration: text, calibration_digest } = row;
  const calibration = text === null ? null : calibrationOf({ calibration: text, calibration_digest }, row.id);
  return { ...common(row), document, calibration };
});

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

type LoopReads = Pick<LoopOperations, 'get' | 'list' | 'count'>;

function loopReads(db: Kysely<Tables>): (siteId: string) => LoopReads {
  const byKey = preparedRead(db, ([siteId = '', id = '']) =>
    db.selectFrom('loop').selectAll().where(isRecord({ siteId, id })),
  );
  return (siteId) => ({
    async get(id) {
      const [row] = await byKey([siteId, id]);
      return row === undefined ? undefined : loopRecord(row);
    },

    async list(request) {
      const { installedPump } = request;
      const onPage = db
        .selectFrom('loop')
        .selectAll()
        .where(mayBeOnPage({ siteId, ...request }));
      const asked =
        installedPump === undefined ? onPage : onPage.where('installed_pump_id', '=', installedPump);
      const rows = await asked.orderBy('created_at').orderBy('id').limit(rowsToRead(request.limit)).execute();
      return pageOf(rows, { limit: request.limit, read: loopRecord });
    },

    async count() {
      const { loops } = await db
        .selectFrom('loop')
        .select(({ fn }) => fn.countAll<number | string>().as('loops'))
        .where('site_id', '=', siteId)
        .executeTakeFirstOrThrow();
      return Number(loops);
    },
  });
}

const loopWrites = (db: Kysely<Tables>, siteId: string): Omit<LoopOperations, keyof LoopReads> => ({
  async insert({ id, document, now, key }) {
    const insertion = db
      .insertInto('loop')
      .values({
        ...{ site_id: siteId, id, version: 1, created_at: now, updated_at: now },
        ...contentColumns(document),
        ...keyColumn(key),
        ...NO_CALIBRATION,
      })
      .returningAll();
    return await unlessKeyTaken(db, { siteId, table: 'loop', key }, async () => {
      const row = await unlessReferenceBroken(() => insertion.executeTakeFirstOrThrow());
      return row === undefined ? unknownPump(document) : { outcome: 'inserted', record: loopRecord(row) };
    });
  },

  async replace({ id, document, now, key, expectedVersion }) {
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
          ...keyColumn(key),
          // What is written of one row is read as it was before the statement, whatever the order.
          calibration: keptIfAbout('calibration'),
          calibration_digest: keptIfAbout('calibration_digest'),
          calibration_of: keptIfAbout('calibration_of'),
        };
      })
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .returningAll();
    return await unlessKeyTaken(db, { siteId, table: 'loop', key }, async () => {
      const rows = await unlessReferenceBroken(() => update.execute());
      if (rows === undefined) return unknownPump(document);
      const [row] = rows;
      if (row !== undefined) return { outcome: 'replaced', record: loopRecord(row) };
      return await staleOrMissing(db, 'loop', { siteId, id });
    });
  },

  async delete({ id, expectedVersion }) {
    const deletion = db.deleteFrom('loop').where(isRecord({ siteId, id })).where(hasVersion(expectedVersion));
    const result = await unlessReferenceBroken(() => deletion.executeTakeFirst());
    if (result === undefined) {
      return { outcome: 'in-use', usedBy: await tasksThatUse(db, { siteId, loop: id }) };
    }
    if (result.numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'loop', { siteId, id });
  },
});

function openLoops(db: Kysely<Tables>): (siteId: string) => LoopOperations {
  const reads = loopReads(db);
  return (siteId) => ({ ...reads(siteId), ...loopWrites(db, siteId) });
}

export const LOOPS = defineKind<LoopOperations>({
  name: 'loop',
  reads: { get: 'remembered', list: 'read-again', count: 'read-again' },
  open: openLoops,
});

/** `place` is null where the id stands in the path. */
export async function findLoop(
  store: SiteStore,
  id: string,
  place: Place | null,
): Promise<Result<LoopRecord, Problem>> {
  const loop = await store.of(LOOPS).get(id);
  return loop === undefined
    ? failed(await unknownRecord(store, { noun: 'loop', name: id, place }))
    : success(loop);
}
