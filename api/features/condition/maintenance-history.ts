/** Finds when a loop and its pump were cleaned and serviced, and what each costs. */
import type { Remedy } from '../../../models/condition/condition.ts';
import { attentionOf } from '../../../models/maintenance/attention.ts';
import type { TaskKind } from '../../../models/maintenance/task.ts';
import { COMPLETIONS } from '../../records/completion/kind.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { MaintenanceTaskRecord, TaskChoice } from '../../records/task/contract.ts';
import { TASKS } from '../../records/task/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { RemedySource } from './answer.ts';

export interface RemedyCost {
  readonly cost: number;
  readonly source: Exclude<RemedySource, 'asked'>;
}

export interface Upkeep {
  /** Instants [ms], rising, at which the screen was cleaned or the wet end serviced, by completions. */
  readonly cleanings: readonly number[];
  readonly costs: Readonly<Record<Remedy, RemedyCost | null>>;
}

const CLEANS: Readonly<Record<Remedy, TaskKind>> = {
  cleaning: 'screen-cleaning',
  service: 'wet-end-service',
};

const PAGE = 200;
/** Of one check: weekly ones of twenty years. */
const PAGES_MOST = 5;

async function completionsOf(store: SiteStore, taskId: string): Promise<readonly number[]> {
  const found: number[] = [];
  let after: { readonly createdAt: number; readonly id: string } | null = null;
  for (let page = 0; page < PAGES_MOST; page += 1) {
    const { records, more } = await store.of(COMPLETIONS).list({ taskId, limit: PAGE, after });
    found.push(...records.map(({ document }) => document.at));
    const last = records.at(-1);
    if (!more || last === undefined) break;
    after = { createdAt: last.document.at, id: last.id };
  }
  return found;
}

async function tasksOf(store: SiteStore, choice: TaskChoice): Promise<readonly MaintenanceTaskRecord[]> {
  const tasks = await store.of(TASKS).all(choice);
  return tasks.outcome === 'all' ? tasks.records : [];
}

/** The service of one pump, as often as there are pumps on the loop. */
const ofAll = (
  service: PumpRecord['document']['service'],
  { document: { installed } }: LoopRecord,
): { readonly minutes: number; readonly parts: number } | undefined => {
  if (service === undefined || installed === undefined) return undefined;
  return { minutes: installed.count * service.minutes, parts: installed.count * service.parts };
};

export async function upkeepOf(
  store: SiteStore,
  { site, loop, pump }: { readonly site: SiteRecord; readonly loop: LoopRecord; readonly pump: PumpRecord },
): Promise<Upkeep> {
  const { labourRate } = site.document;
  const ofLoop = await tasksOf(store, { loop: loop.id });
  const ofPump = await tasksOf(store, { pump: pump.id });
  const tasks = [...ofLoop, ...ofPump].filter(({ document: { kind } }) =>
    Object.values(CLEANS).includes(kind),
  );
  const done = await Promise.all(tasks.map(({ id }) => completionsOf(store, id)));
  const priced = (
    work: { readonly minutes: number; readonly parts: number } | undefined,
    source: RemedyCost['source'],
  ): RemedyCost | null => {
    if (work === undefined) return null;
    const { cost } = attentionOf([{ ...work, timesAYear: 1 }], labourRate);
    return cost === null || cost === 0 ? null : { cost, source };
  };
  const ofTask = (remedy: Remedy) =>
    priced(tasks.find(({ document }) => document.kind === CLEANS[remedy])?.document, 'maintenance-task');
  const service = priced(ofAll(pump.document.service, loop), 'pump-service') ?? ofTask('service');
  return {
    cleanings: [...new Set(done.flat())].toSorted((a, b) => a - b),
    costs: { cleaning: ofTask('cleaning') ?? service, service },
  };
}
