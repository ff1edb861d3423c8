/** The calibrations of loops, read and written as part of a whole site. */
import type { Kysely } from 'kysely';
import { calibrationOf } from '../../records/loop/calibration-column.ts';
import { type KindOfRecord, later, RECORDS_OF_A_KIND_MAX } from '../../store/exported-kind.ts';
import { digestOf, jsonText } from '../../store/json-text.ts';
import type { Tables } from '../../store/tables.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { isRecord } from '../../store/where-clauses.ts';
import type { CopiedCalibration } from './contract.ts';

/** With the place of the one that each loop goes by; a loop that goes by one goes by the last that was not undone. */
const calibrationRows = (db: Kysely<Tables>, siteId: string) =>
  db
    .selectFrom('loop_calibration')
    .innerJoin('loop', (join) =>
      join
        .onRef('loop.site_id', '=', 'loop_calibration.site_id')
        .onRef('loop.id', '=', 'loop_calibration.loop_id'),
    )
    .selectAll('loop_calibration')
    .select(['loop.calibration_digest as digest_in_use', 'loop.calibration_of as of_in_use'])
    .where('loop_calibration.site_id', '=', siteId)
    .orderBy('loop_id')
    .orderBy('place')
    .execute();

type Row = Awaited<ReturnType<typeof calibrationRows>>[number];

const isStanding = (row: Row): boolean =>
  row.undone_at === null &&
  row.calibration_digest === row.digest_in_use &&
  row.calibration_of === row.of_in_use;

function recordOf(row: Row, inUse: boolean): StoredRecord<CopiedCalibration> {
  const { loop_id: loop, place, applied_at: appliedAt, undone_at: undoneAt, calibration_of: of } = row;
  const calibration = calibrationOf(row, loop);
  const document = { loop, place, appliedAt, undoneAt, of, inUse, calibration };
  const times = { createdAt: appliedAt, updatedAt: undoneAt ?? appliedAt };
  return { id: `${loop}-${place}`, version: 1, ...times, name: 'calibration', document };
}

export const EXPORTED_CALIBRATIONS: KindOfRecord<StoredRecord<CopiedCalibration>> = {
  most: RECORDS_OF_A_KIND_MAX,

  async count(db, siteId) {
    const { records } = await db
      .selectFrom('loop_calibration')
      .select(({ fn }) => fn.countAll<number | string>().as('records'))
      .where('site_id', '=', siteId)
      .executeTakeFirstOrThrow();
    return { records: Number(records), characters: 0 };
  },

  async read(db, siteId) {
    const rows = await calibrationRows(db, siteId);
    const lastStanding = new Map(rows.filter(isStanding).map((row) => [row.loop_id, row.place]));
    return later(rows, (row) => recordOf(row, lastStanding.get(row.loop_id) === row.place));
  },

  async write(all, siteId, records) {
    for (const make of records) {
      const { loop, place, appliedAt, undoneAt, of, inUse, calibration } = make().document;
      const text = jsonText(calibration);
      const columns = {
        calibration: text,
        calibration_digest: digestOf([text]),
        calibration_of: of,
      };
      const row = { site_id: siteId, loop_id: loop, place, applied_at: appliedAt, undone_at: undoneAt };
      await all
        .insertInto('loop_calibration')
        .values({ ...row, ...columns })
        .execute();
      if (!inUse) continue;
      await all
        .updateTable('loop')
        .set(columns)
        .where(isRecord({ siteId, id: loop }))
        .execute();
    }
  },
};
