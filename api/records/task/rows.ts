/** Routine checks and completions as rows, and the rows read back. */
import { attentionOf } from '../../../models/maintenance/attention.ts';
import { nextDue } from '../../../models/maintenance/next-due.ts';
import { type MaintenanceTask, taskWork } from '../../../models/maintenance/task.ts';
import { checkDigest, digestOf, jsonText } from '../../store/json-text.ts';
import { parsedOnce } from '../../store/parsed-once.ts';
import { common } from '../../store/rows.ts';
import type { MaintenanceTaskRow } from '../../store/tables.ts';
import type { MaintenanceTaskRecord } from './contract.ts';

export type Done = Pick<MaintenanceTaskRow, 'last_done_at' | 'last_done_day'>;

export const NEVER_DONE: Done = { last_done_at: null, last_done_day: null };

/** All of a row that follows from what was entered and from when it was last done. */
export function taskColumns(document: MaintenanceTask, done: Done) {
  const text = jsonText(document);
  const { hours, parts } = attentionOf([taskWork(document)], null);
  return {
    name: document.name,
    document: text,
    digest: digestOf([text]),
    kind: document.kind,
    loop_id: document.loop ?? null,
    pump_id: document.pump ?? null,
    year_hours: hours,
    year_parts: parts,
    next_due: nextDue(document, done.last_done_day),
    last_done_at: done.last_done_at,
    last_done_day: done.last_done_day,
  };
}

// The digest proves that a text is the one made from a value of the type, so parsing gives that type back.

export const taskRecord = parsedOnce((row: MaintenanceTaskRow): MaintenanceTaskRecord => {
  checkDigest(row, 'maintenance_task', [row.document]);
  const document: MaintenanceTask = JSON.parse(row.document);
  const { last_done_at: at, last_done_day: day } = row;
  return {
    ...common(row),
    document,
    progress: {
      nextDue: row.next_due,
      lastDone: at === null || day === null ? null : { at, day },
      completions: row.completions,
      changes: row.changes,
      changedAt: row.changed_at,
    },
  };
});
