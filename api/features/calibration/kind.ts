/** Calibrations of loops in a database. */
import type { Kysely, Transaction } from 'kysely';
import { calibrationColumns, calibrationOf, NO_CALIBRATION } from '../../records/loop/calibration-column.ts';
import { loopRecord } from '../../records/loop/kind.ts';
import { defineKind } from '../../store/kind.ts';
import type { LoopCalibrationRow, LoopRow, Tables } from '../../store/tables.ts';
import { staleOrMissing } from '../../store/version-check.ts';
import type { InSite } from '../../store/versions.ts';
import { hasVersion, isRecord } from '../../store/where-clauses.ts';
import {
  CALIBRATIONS_READ_MAX,
  type CalibrationChange,
  type CalibrationOperations,
  type CalibrationRecord,
  type NewCalibration,
} from './contract.ts';

type Columns = Pick<LoopRow, 'calibration' | 'calibration_digest' | 'calibration_of'>;

/** The loop of a stated version moves on by one, whatever is changed of it. */
async function moveOn(
  all: Transaction<Tables>,
  { siteId, id, now, expectedVersion }: CalibrationChange & InSite,
): Promise<LoopRow | undefined> {
  return await all
    .updateTable('loop')
    .set((eb) => ({ version: eb('version', '+', 1), updated_at: now }))
    .where(isRecord({ siteId, id }))
    .where(hasVersion(expectedVersion))
    .returningAll()
    .executeTakeFirst();
}

async function withColumns(all: Transaction<Tables>, row: LoopRow, columns: Columns) {
  const changed = await all
    .updateTable('loop')
    .set(columns)
    .where(isRecord({ siteId: row.site_id, id: row.id }))
    .returningAll()
    .executeTakeFirstOrThrow();
  return loopRecord(changed);
}

const ofLoop = (all: Kysely<Tables>, { siteId, id }: { siteId: string; id: string }) =>
  all.selectFrom('loop_calibration').selectAll().where('site_id', '=', siteId).where('loop_id', '=', id);

async function apply(all: Transaction<Tables>, change: NewCalibration & InSite) {
  const { siteId, id, now, calibration } = change;
  const row = await moveOn(all, change);
  if (row === undefined) return await staleOrMissing(all, 'loop', change);
  const columns = calibrationColumns(calibration, loopRecord(row).document);
  const latest = await ofLoop(all, change).orderBy('place', 'desc').limit(1).executeTakeFirst();
  await all
    .insertInto('loop_calibration')
    .values({
      ...{ site_id: siteId, loop_id: id, place: (latest?.place ?? 0) + 1 },
      ...{ applied_at: now, undone_at: null },
      ...columns,
    })
    .execute();
  return { outcome: 'applied', loop: await withColumns(all, row, columns) } as const;
}

/** Those in use and before it that were not undone, the latest first. */
const standing = (all: Transaction<Tables>, row: LoopRow): Promise<readonly LoopCalibrationRow[]> =>
  ofLoop(all, { siteId: row.site_id, id: row.id })
    .where('undone_at', 'is', null)
    .where('calibration_of', '=', row.calibration_of ?? '')
    .orderBy('place', 'desc')
    .limit(2)
    .execute();

async function undo(all: Transaction<Tables>, change: CalibrationChange & InSite) {
  const { siteId, id, now, expectedVersion } = change;
  const row = await all.selectFrom('loop').selectAll().where(isRecord({ siteId, id })).executeTakeFirst();
  if (row === undefined) return { outcome: 'missing' } as const;
  const isStale = expectedVersion !== 'any' && expectedVersion !== row.version;
  if (isStale) return { outcome: 'stale', version: row.version } as const;
  if (row.calibration === null) return { outcome: 'no-calibration' } as const;
  const moved = await moveOn(all, { ...change, expectedVersion: row.version });
  if (moved === undefined) return await staleOrMissing(all, 'loop', change);
  const [current, before] = await standing(all, row);
  if (current === undefined)
    throw new Error(`invariant: loop ${id} has a calibration that was never applied`);
  await all
    .updateTable('loop_calibration')
    .set({ undone_at: now })
    .where('site_id', '=', siteId)
    .where('loop_id', '=', id)
    .where('place', '=', current.place)
    .execute();
  const { calibration, calibration_digest, calibration_of } = before ?? NO_CALIBRATION;
  const loop = await withColumns(all, moved, { calibration, calibration_digest, calibration_of });
  return { outcome: 'undone', loop } as const;
}

const recordOf = (row: LoopCalibrationRow): CalibrationRecord => ({
  place: row.place,
  appliedAt: row.applied_at,
  undoneAt: row.undone_at,
  calibration: calibrationOf(row, row.loop_id),
});

const openCalibrations =
  (db: Kysely<Tables>) =>
  (siteId: string): CalibrationOperations => ({
    apply: (change) => db.transaction().execute((all) => apply(all, { ...change, siteId })),

    undo: (change) => db.transaction().execute((all) => undo(all, { ...change, siteId })),

    async list(loop) {
      const rows = await ofLoop(db, { siteId, id: loop })
        .orderBy('place', 'desc')
        .limit(CALIBRATIONS_READ_MAX)
        .execute();
      return rows.map(recordOf);
    },
  });

export const CALIBRATIONS = defineKind<CalibrationOperations>({
  name: 'calibration',
  reads: { list: 'read-again' },
  open: openCalibrations,
});
