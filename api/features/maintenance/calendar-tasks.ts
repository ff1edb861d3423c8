/** Finds the routine checks that a calendar shows, with the names of their loops and pumps. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { LOOPS } from '../../records/loop/kind.ts';
import { findPumps } from '../../records/pump/kind.ts';
import type { MaintenanceTaskRecord, TaskChoice } from '../../records/task/contract.ts';
import { TASKS } from '../../records/task/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { NamedTask } from './calendar.ts';

/** A calendar of more events is beyond what programs that subscribe to it take with ease. */
const CALENDAR_TASKS_MAX = 1_000;

const distinct = (ids: readonly (string | undefined)[]): readonly string[] => [
  ...new Set(ids.filter((id) => id !== undefined)),
];

async function namesOf(
  store: SiteStore,
  records: readonly MaintenanceTaskRecord[],
): Promise<ReadonlyMap<string, string>> {
  const loopIds = distinct(records.map(({ document }) => document.loop));
  const ids = distinct(records.map(({ document }) => document.pump));
  const [pumps, loops] = await Promise.all([
    findPumps(store, ids),
    Promise.all(loopIds.map((id) => store.of(LOOPS).get(id))),
  ]);
  const found = [...pumps, ...loops].filter((record) => record !== undefined);
  return new Map(found.map(({ id, name }) => [id, name]));
}

export async function calendarTasks(
  store: SiteStore,
  choice: TaskChoice,
): Promise<Result<readonly NamedTask[], Problem>> {
  const all = await store.of(TASKS).all(choice);
  const actual = all.outcome === 'all' ? all.records.length : all.actual;
  if (all.outcome !== 'all' || actual > CALENDAR_TASKS_MAX) {
    const limit = CALENDAR_TASKS_MAX;
    const detail = `A calendar holds at most ${limit} checks, not ${actual}: subscribe by \`?loop=\`.`;
    return failed(problem('limit-exceeded', detail, { limit, actual }));
  }
  const names = await namesOf(store, all.records);
  const named = all.records.map((record) => {
    const of = names.get(record.document.loop ?? record.document.pump);
    if (of === undefined) throw new Error('invariant: what a task is of stays while the task does');
    return { record, of };
  });
  return success(named);
}
