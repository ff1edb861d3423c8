/** The condition of a stored loop: which readings it is judged by, what they are priced by, what it then answers. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import type { Remedy } from '../../../models/condition/condition.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { runHeavy } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { tariffPrice } from '../../question/tariff-price.ts';
import type { LoopCache } from '../../records/loop/compiled-loops.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { sinceInstalled } from '../../records/loop/since-installed.ts';
import { findPump } from '../../records/pump/kind.ts';
import { timeRange } from '../../records/reading/time-range.ts';
import { findSite } from '../../records/site/kind.ts';
import type { Store } from '../../store/store.ts';
import type { HeavyWork } from '../../threads/worker-pool.ts';
import { conditionAnswer, type RemedySource } from './answer.ts';
import { computeCondition, isLongCondition } from './job.ts';
import { upkeepOf } from './maintenance-history.ts';
import { readingsJudged } from './readings-judged.ts';

export interface ConditionAsked {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly price?: number | undefined;
  readonly cleaningCost?: number | undefined;
}

interface Services {
  readonly store: Store;
  readonly clock: () => Date;
  readonly heavyWork: HeavyWork;
  readonly loops: LoopCache;
}

export async function answerCondition(
  { store, clock, heavyWork, loops }: Services,
  { loop, asked }: { readonly loop: LoopRecord; readonly asked: ConditionAsked },
): Promise<Result<ReturnType<typeof answerOf>, Problem>> {
  const { installed } = loop.document;
  if (installed === undefined) {
    return failed(problem('no-installed-pump', 'The loop has no installed pump to judge readings by.'));
  }
  const range = timeRange(asked);
  if (!range.ok) return range;
  const pump = await findPump(store, installed.pump, { pointer: '/installed/pump' });
  if (!pump.ok) return pump;
  const ready = loops.ready(loop, []);
  if (!ready.ok) return ready;
  const site = await findSite(store);
  const tariff = await tariffPrice({ store, clock }, site, { price: asked.price }, { parameter: 'price' });
  if (!tariff.ok) return tariff;
  const key = { siteId: site.id, loop: loop.id };
  const from = Math.max(range.value.from, sinceInstalled(installed, site));
  const { changes } = await store.readingSpan(key);
  const { readings, total } = await readingsJudged(store, { ...key, from, before: range.value.before });
  const upkeep = await upkeepOf(store, { site, loop, pump: pump.value });
  const [first, last] = [readings[0], readings.at(-1)];
  const cleanings = upkeep.cleanings.filter((at) => at > (first?.time ?? at) && at <= (last?.time ?? 0));
  const costOf = (remedy: Remedy) => asked.cleaningCost ?? upkeep.costs[remedy]?.cost ?? null;
  const { model } = ready.value;
  const work = {
    pump: { entered: pump.value.document, fit: fitOnLoop(pump.value, loop.calibration) },
    count: installed.count,
    setting: installed.setting,
    readings,
    price: asked.price ?? tariff.value?.price ?? site.document.price,
    cleanings,
    costs: { cleaning: costOf('cleaning'), service: costOf('service') },
  };
  const done = isLongCondition(model, work)
    ? await runHeavy(heavyWork, 'condition', { loop: model.entered, work })
    : success(computeCondition(model, work));
  if (!done.ok) return done;
  if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
  const schedule = await store.getSchedule({ siteId: site.id, id: loop.id });
  const figures = done.value.value;
  const stated = upkeep.costs[figures.remedy]?.source ?? null;
  const source: RemedySource | null = asked.cleaningCost === undefined ? stated : 'asked';
  const facts = { model, figures, readings, total, source, cleanings };
  const sources = { site, loop, pump: pump.value, schedule: schedule ?? null };
  return success(answerOf({ ...facts, ...sources }, { tariff: tariff.value, changes, upkeep }));
}

function answerOf(
  facts: Omit<Parameters<typeof conditionAnswer>[0], 'basis'>,
  rest: { readonly tariff: unknown; readonly changes: number; readonly upkeep: unknown },
) {
  const { loop, pump, site, schedule } = facts;
  const basis = {
    modelVersion: MODEL_VERSION,
    loop: { id: loop.id, version: loop.version },
    pumps: [{ id: pump.id, version: pump.version }],
  };
  const body = conditionAnswer({ ...facts, basis });
  return {
    body,
    validator: { basis: { ...basis, ...rest, site: site.version, schedule: schedule?.version } },
  };
}
