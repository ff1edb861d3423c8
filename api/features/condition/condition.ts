/** Judges the condition of a stored loop by its readings. */

import { setImmediate } from 'node:timers/promises';
import { failed, type Result, success } from '../../../curves/result.ts';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import type { Remedy } from '../../../models/condition/condition.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { basisOf } from '../../fields/basis.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { tariffPrice } from '../../question/tariff-price.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { sinceInstalled } from '../../records/loop/since-installed.ts';
import { findPump } from '../../records/pump/kind.ts';
import type { ReadingChoice } from '../../records/reading/contract.ts';
import { READINGS } from '../../records/reading/kind.ts';
import { timeRange } from '../../records/reading/time-range.ts';
import { SCHEDULES } from '../../records/schedule/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { conditionAnswer, type RemedySource } from './answer.ts';
import { conditionJob } from './job.ts';
import { upkeepOf } from './maintenance-history.ts';

export interface ConditionAsked {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly price?: number | undefined;
  readonly cleaningCost?: number | undefined;
}

interface Deps {
  readonly store: SiteStore;
  readonly clock: () => Date;
  readonly workers: WorkerPool;
  readonly loops: CompiledLoops;
}

export async function answerCondition(
  { store, clock, workers, loops }: Deps,
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
  const compiled = loops.compile(loop, []);
  if (!compiled.ok) return compiled;
  const site = await findSite(store);
  const tariff = await tariffPrice({ store, clock }, site, { price: asked.price }, { parameter: 'price' });
  if (!tariff.ok) return tariff;
  const from = Math.max(range.value.from, sinceInstalled(installed, site));
  const { changes } = await store.of(READINGS).span(loop.id);
  const { readings, total } = await readingsJudged(store, {
    loop: loop.id,
    from,
    before: range.value.before,
  });
  const upkeep = await upkeepOf(store, { site, loop, pump: pump.value });
  const [first, last] = [readings[0], readings.at(-1)];
  const cleanings = upkeep.cleanings.filter((at) => at > (first?.time ?? at) && at <= (last?.time ?? 0));
  const costOf = (remedy: Remedy) => asked.cleaningCost ?? upkeep.costs[remedy]?.cost ?? null;
  const model = compiled.value;
  const work = {
    pump: { entered: pump.value.document, fit: fitOnLoop(pump.value, loop.calibration) },
    count: installed.count,
    setting: installed.setting,
    readings,
    price: asked.price ?? tariff.value?.price ?? site.document.price,
    cleanings,
    costs: { cleaning: costOf('cleaning'), service: costOf('service') },
  };
  const done = await runJob(workers, conditionJob, { ready: model, work });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
  const schedule = await store.of(SCHEDULES).get(loop.id);
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
  const basis = basisOf({ loop, pumps: [pump] });
  const body = conditionAnswer({ ...facts, basis });
  return {
    body,
    validator: { basis: { ...basis, ...rest, site: site.version, schedule: schedule?.version } },
  };
}

/** So many are judged one by one; a year has 526 minutes each thousandth part. */
const JUDGED_MOST = 20_000;
/** Days that one statement samples: other requests are served between two of them. */
const DAYS_AT_ONCE = 28;
/** Ranges longer than this many statements are sampled by fewer, larger ones. */
const STATEMENTS_MOST = 60;

interface JudgedReadings {
  readonly readings: readonly Reading[];
  /** How many there are in the range. */
  readonly total: number;
}

/** All readings of a range, or a sample of them where they are many. */
async function readingsJudged(store: SiteStore, choice: ReadingChoice): Promise<JudgedReadings> {
  const { range } = await store.of(READINGS).span(choice.loop);
  if (range === null) return { readings: [], total: 0 };
  const from = Math.max(choice.from, range.first);
  const before = Math.min(choice.before, range.last + 1);
  const total = await store.of(READINGS).count({ ...choice, from, before });
  if (total <= JUDGED_MOST) {
    return {
      readings: await store.of(READINGS).between({ ...choice, from, before, limit: JUDGED_MOST }),
      total,
    };
  }
  const apart = Math.ceil((before - from) / JUDGED_MOST);
  const step = Math.max(DAYS_AT_ONCE * MS_PER_DAY, Math.ceil((before - from) / STATEMENTS_MOST));
  const readings: Reading[] = [];
  for (let at = from; at < before; at += step) {
    const end = Math.min(before, at + step);
    readings.push(...(await store.of(READINGS).sampled({ ...choice, from: at, before: end, apart })));
    await setImmediate();
  }
  return { readings, total };
}
