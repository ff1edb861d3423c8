/** Finds the routine checks that a calendar shows, with the names of their loops and pumps. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { MaintenanceTaskRecord, TaskChoice } from '../../records/task/contract.ts';
import type { Store } from '../../store/store.ts';
import type { NamedTask } from './calendar.ts';

/** A calendar of more events is beyond what programs that subscribe to it take with ease. */
const CALENDAR_TASKS_MAX = 1_000;

const distinct = (ids: readonly (string | undefined)[]): readonly string[] => [
  ...new Set(ids.filter((id) => id !== undefined)),
];

async function namesOf(
  store: Store,
  siteId: string,
  records: readonly MaintenanceTaskRecord[],
): Promise<ReadonlyMap<string, string>> {
  const loopIds = distinct(records.map(({ document }) => document.loop));
  const ids = distinct(records.map(({ document }) => document.pump));
  const [pumps, loops] = await Promise.all([
    store.getPumps({ siteId, ids }),
    Promise.all(loopIds.map((id) => store.getLoop({ siteId, id }))),
  ]);
  const found = [...pumps, ...loops].filter((record) => record !== undefined);
  return new Map(found.map(({ id, name }) => [id, name]));
}

export async function calendarTasks(
  store: Store,
  choice: TaskChoice,
): Promise<Result<readonly NamedTask[], Problem>> {
  const all = await store.allMaintenanceTasks(choice);
  const actual = all.outcome === 'all' ? all.records.length : all.actual;
  if (all.outcome !== 'all' || actual > CALENDAR_TASKS_MAX) {
    const limit = CALENDAR_TASKS_MAX;
    const detail = `A calendar holds at most ${limit} checks, not ${actual}: subscribe by \`?loop=\`.`;
    return failed(problem('limit-exceeded', detail, { limit, actual }));
  }
  const names = await namesOf(store, choice.siteId, all.records);
  const named = all.records.map((record) => {
    const of = names.get(record.document.loop ?? record.document.pump);
    if (of === undefined) throw new Error('invariant: what a task is of stays while the task does');
    return { record, of };
  });
  return success(named);
}
