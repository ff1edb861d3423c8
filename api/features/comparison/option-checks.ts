/** The routine checks of an option: of its loops and of its pumps, each once. */
import { type Attention, attentionOf } from '../../../models/maintenance/attention.ts';
import { taskWork } from '../../../models/maintenance/task.ts';
import type { TaskChoice } from '../../records/task/contract.ts';
import type { AssemblyFigures } from './assembly/assembly-figures.ts';
import type { ComparisonContext } from './context.ts';

/** A check of the wet end that a pump's own service covers counts once, as that service. */
interface Checked {
  readonly of: Pick<TaskChoice, 'loop' | 'pump'>;
  readonly isServiced: boolean;
}

function checkedBy(assemblies: readonly AssemblyFigures[]): readonly Checked[] {
  const all = new Map<string, Checked>();
  for (const { found, candidate } of assemblies) {
    const isServiced = candidate?.entered.service !== undefined;
    for (const { id } of found?.parts ?? []) {
      if (id !== null) all.set(`loop ${id}`, { of: { loop: id }, isServiced });
    }
    const pump = candidate?.id ?? null;
    if (pump !== null) all.set(`pump ${pump}`, { of: { pump }, isServiced });
  }
  return [...all.values()];
}

/** Hours and money for parts a year. */
export async function optionChecks(
  { deps: { store }, siteId, labourRate }: ComparisonContext,
  assemblies: readonly AssemblyFigures[],
): Promise<Pick<Attention, 'hours' | 'parts'>> {
  const works = [];
  for (const { of, isServiced } of checkedBy(assemblies)) {
    const tasks = await store.allMaintenanceTasks({ siteId, ...of });
    for (const { document } of tasks.outcome === 'all' ? tasks.records : []) {
      if (document.kind !== 'wet-end-service' || !isServiced) works.push(taskWork(document));
    }
  }
  return attentionOf(works, labourRate);
}
