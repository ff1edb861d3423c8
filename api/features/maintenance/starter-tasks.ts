/** The starter set of a stored loop, less what it has. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { missingFrom, starterSet } from '../../../models/maintenance/starter-set.ts';
import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { dateText } from '../../records/task/answer.ts';
import type { FirstDue } from '../../records/task/schema.ts';
import { firstDay } from '../../records/task/view.ts';
import { DEFAULT_SITE_ID } from '../../store/default-site.ts';
import type { Store } from '../../store/store.ts';

interface Asked {
  readonly firstDue: FirstDue | undefined;
  readonly view: { readonly timeZone: string; readonly today: number };
}

interface StarterTasks {
  readonly documents: readonly MaintenanceTask[];
  readonly kept: number;
  readonly cautions: readonly Caution[];
}

export async function starterTasks(
  store: Store,
  loop: LoopRecord,
  { firstDue, view }: Asked,
): Promise<Result<StarterTasks, Problem>> {
  const installed = loop.document.installed?.pump;
  const pump =
    installed === undefined ? undefined : await store.getPump({ siteId: DEFAULT_SITE_ID, id: installed });
  const there = await store.allMaintenanceTasks({ siteId: DEFAULT_SITE_ID, loop: loop.id });
  if (there.outcome === 'too-many') return failed(tooMany(there));
  const set = starterSet(loop.document, pump?.document ?? null);
  if (!set.ok) return failed(tooMany(set.failure));
  const due = firstDue === undefined ? dateText(view.today) : firstDay(firstDue, view.timeZone);
  const documents = missingFrom(
    there.records.map(({ document }) => document),
    set.value.tasks,
  ).map((task) => ({ ...task, loop: loop.id, firstDue: due }));
  return success({ documents, kept: there.records.length, cautions: set.value.cautions });
}

const tooMany = ({ limit, actual }: { readonly limit: number; readonly actual: number }): Problem =>
  problem('limit-exceeded', `The loop asks for ${actual} checks; ${limit} are the most.`, { limit, actual });
