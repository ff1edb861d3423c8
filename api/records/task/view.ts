/** Gives routes about routine checks what they share: the site's day, checks by their ids, refusals of the store. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { siteDay } from '../../clock/site-time.ts';
import type { SiteDependencies } from '../../http/api.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import type { SiteStore } from '../../store/store.ts';
import { findSite } from '../site/kind.ts';
import { type RefusedWrite, writeProblem } from '../write-problems.ts';
import { dateText, type TaskView } from './answer.ts';
import type { MaintenanceTaskRecord } from './contract.ts';
import { TASKS } from './kind.ts';
import type { EnteredTask, FirstDue } from './schema.ts';

type Deps = Pick<SiteDependencies, 'store' | 'clock'>;

/** The site and the day that its clocks show now. */
export async function taskView({ store, clock }: Deps): Promise<TaskView & { readonly timeZone: string }> {
  const { document: site } = await findSite(store);
  return { site, timeZone: site.timeZone, today: siteDay(site.timeZone, clock().getTime()) };
}

export const firstDay = (firstDue: FirstDue, timeZone: string): string =>
  'date' in firstDue ? firstDue.date : dateText(siteDay(timeZone, firstDue.at));

export const taskOf = (entered: EnteredTask, timeZone: string): MaintenanceTask => ({
  ...entered,
  firstDue: firstDay(entered.firstDue, timeZone),
});

export async function findTask(
  store: SiteStore,
  id: string,
): Promise<Result<MaintenanceTaskRecord, Problem>> {
  const task = await store.of(TASKS).get(id);
  return task === undefined
    ? failed(await unknownRecord(store, { noun: TASK_NOUN, name: id, place: null }))
    : success(task);
}

/** As problems call a routine check. */
export const TASK_NOUN = 'maintenance task';

export const taskProblem = (refused: RefusedWrite): Problem =>
  refused.outcome === 'unknown-pump'
    ? invalidRequest([{ pointer: '/pump', detail: 'names no pump that is stored' }])
    : writeProblem(refused, TASK_NOUN);
