/** Renames members of stored documents to those of version 0.2. */
import type { Kysely, Migration } from 'kysely';
import { digestOf } from '../json-text.ts';
import {
  CALIBRATION_NAMES,
  COMPARISON_NAMES,
  type MemberNames,
  SCHEDULE_NAMES,
  TASK_NAMES,
  UPGRADE_PLAN_NAMES,
  withNames,
} from '../renamed-members.ts';

/** The columns as they were then. */
interface Documents {
  readonly site_id: string;
  readonly id: string;
  readonly document: string;
  readonly digest: string;
}

interface Calibrated {
  readonly site_id: string;
  readonly id: string;
  readonly calibration: string | null;
  readonly calibration_digest: string | null;
}

interface Applied {
  readonly site_id: string;
  readonly loop_id: string;
  readonly place: number;
  readonly calibration: string;
  readonly calibration_digest: string;
}

interface Then {
  readonly schedule: Documents;
  readonly maintenance_task: Documents;
  readonly comparison: Documents;
  readonly upgrade_plan: Documents;
  readonly loop: Calibrated;
  readonly loop_calibration: Applied;
}

const DOCUMENTS = {
  schedule: SCHEDULE_NAMES,
  maintenance_task: TASK_NAMES,
  comparison: COMPARISON_NAMES,
  upgrade_plan: UPGRADE_PLAN_NAMES,
} as const;

/** Null where the text is damaged: its digest must go on saying so. */
function renamedText(text: string, digest: string | null, names: MemberNames): string | null {
  if (digestOf([text]) !== digest) return null;
  const value: unknown = JSON.parse(text);
  return JSON.stringify(withNames(value, names));
}

async function renameDocuments(db: Kysely<Then>, table: keyof typeof DOCUMENTS): Promise<void> {
  const rows = await db.selectFrom(table).select(['site_id', 'id', 'document', 'digest']).execute();
  for (const { site_id, id, document, digest } of rows) {
    const text = renamedText(document, digest, DOCUMENTS[table]);
    if (text === null) continue;
    await db
      .updateTable(table)
      .set({ document: text, digest: digestOf([text]) })
      .where('site_id', '=', site_id)
      .where('id', '=', id)
      .execute();
  }
}

async function renameCalibrations(db: Kysely<Then>): Promise<void> {
  const loops = await db.selectFrom('loop').selectAll().where('calibration', 'is not', null).execute();
  for (const { site_id, id, calibration, calibration_digest } of loops) {
    const text = renamedText(calibration ?? '', calibration_digest, CALIBRATION_NAMES);
    if (text === null) continue;
    await db
      .updateTable('loop')
      .set({ calibration: text, calibration_digest: digestOf([text]) })
      .where('site_id', '=', site_id)
      .where('id', '=', id)
      .execute();
  }
  for (const row of await db.selectFrom('loop_calibration').selectAll().execute()) {
    const text = renamedText(row.calibration, row.calibration_digest, CALIBRATION_NAMES);
    if (text === null) continue;
    await db
      .updateTable('loop_calibration')
      .set({ calibration: text, calibration_digest: digestOf([text]) })
      .where('site_id', '=', row.site_id)
      .where('loop_id', '=', row.loop_id)
      .where('place', '=', row.place)
      .execute();
  }
}

export const names: Migration = {
  async up(db: Kysely<Then>) {
    await renameDocuments(db, 'schedule');
    await renameDocuments(db, 'maintenance_task');
    await renameDocuments(db, 'comparison');
    await renameDocuments(db, 'upgrade_plan');
    await renameCalibrations(db);
  },
};
