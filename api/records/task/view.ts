/** Gives routes about routine checks what they share: the site's day, checks by their ids, refusals of the store. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { siteDay } from '../../clock/site-time.ts';
import type { AppDependencies } from '../../http/api.ts';
import { invalidRequest, type Problem, problem } from '../../http/problem.ts';
import type { InUse, Missing, RecordKey, Stale, UnknownPump } from '../../store/versions.ts';
import { findSite } from '../site/kind.ts';
import { writeProblem } from '../write-problems.ts';
import { dateText, type TaskView } from './answer.ts';
import type { MaintenanceTaskRecord, UnknownLoop } from './contract.ts';
import type { EnteredTask, FirstDue } from './schema.ts';

type Deps = Pick<AppDependencies, 'store' | 'clock'>;

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
  { store }: Pick<Deps, 'store'>,
  key: RecordKey,
): Promise<Result<MaintenanceTaskRecord, Problem>> {
  const task = await store.getMaintenanceTask(key);
  return task === undefined ? failed(noTask()) : success(task);
}

export const noTask = (): Problem => problem('not-found', 'There is no maintenance task with this id.');

export function taskProblem(outcome: Stale | Missing | InUse | UnknownLoop | UnknownPump): Problem {
  switch (outcome.outcome) {
    case 'unknown-loop':
      return invalidRequest([{ pointer: '/loop', detail: 'names no loop that is stored' }]);
    case 'unknown-pump':
      return invalidRequest([{ pointer: '/pump', detail: 'names no pump that is stored' }]);
    default:
      return writeProblem(outcome, 'maintenance task');
  }
}
