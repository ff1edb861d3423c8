/** Judges a stored loop by its readings: what was found, with the records that it rests on. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { MS_PER_DAY, MS_PER_HOUR } from '../../../models/calendar/zone-offsets.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import type { Remedy } from '../../../models/condition/waiting-cost.ts';
import { zoneBetween } from '../../clock/zone-between.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { tariffPrice } from '../../question/tariff-price.ts';
import { BASELINES } from '../../records/baseline/kind.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { sinceInstalled } from '../../records/loop/since-installed.ts';
import { findPump, type PumpRecord } from '../../records/pump/kind.ts';
import { READINGS } from '../../records/reading/kind.ts';
import { timeRange } from '../../records/reading/time-range.ts';
import { findSite, type SiteRecord } from '../../records/site/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { baselineEvents } from './baseline-events.ts';
import { conditionJob } from './job.ts';
import { type Upkeep, upkeepOf } from './maintenance-history.ts';
import { type JudgedReadings, readingsJudged } from './readings-judged.ts';

export interface ConditionAsked {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly price?: number | undefined;
  readonly cleaningCost?: number | undefined;
  readonly include?: readonly Included[] | undefined;
}

/** What an answer has besides where it is asked for. */
export const INCLUDED = ['series', 'cleanedAt'] as const;
export type Included = (typeof INCLUDED)[number];

export interface ConditionDeps {
  readonly store: SiteStore;
  readonly clock: () => Date;
  readonly workers: WorkerPool;
  readonly loops: CompiledLoops;
}

/** What was found of a loop, with the records that it rests on. */
export interface JudgedLoop extends JudgedReadings {
  readonly report: ConditionReport;
  readonly site: SiteRecord;
  readonly pump: PumpRecord;
  readonly upkeep: Upkeep;
  readonly model: Extract<ReturnType<CompiledLoops['compile']>, { ok: true }>['value'];
  /** All else that the report follows from, plain. */
  readonly sources: unknown;
}

export async function judgeLoop(
  { store, clock, workers, loops }: ConditionDeps,
  { loop, asked }: { readonly loop: LoopRecord; readonly asked: ConditionAsked },
): Promise<Result<JudgedLoop, Problem>> {
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
  const since = sinceInstalled(installed, site);
  const { changes } = await store.of(READINGS).span(loop.id);
  const from = Math.max(range.value.from, since);
  const judged = await readingsJudged(store, { loop: loop.id, from, before: range.value.before });
  const upkeep = await upkeepOf(store, { site, loop, pump: pump.value });
  const start = await store.of(BASELINES).get(loop.id);
  const now = asked.to ?? clock().getTime();
  const { settings } = pump.value.document;
  const costOf = (remedy: Remedy) => asked.cleaningCost ?? upkeep.costs[remedy]?.cost ?? null;
  const work = {
    pump: { entered: pump.value.document, fit: fitOnLoop(pump.value, loop.calibration) },
    count: installed.count,
    setting: Math.min(settings.max, Math.max(settings.min, installed.setting)),
    readings: judged.readings,
    meters: loop.document.meters ?? [],
    events: baselineEvents({ start, since, remedied: upkeep.remedied }),
    now: now / MS_PER_DAY,
    zone: zoneBetween(site.document.timeZone, { from: judged.readings[0]?.time ?? now, until: now }),
    price: asked.price ?? tariff.value?.price ?? site.document.price,
    costs: { cleaning: costOf('cleaning'), service: costOf('service') },
  };
  const done = await runJob(workers, conditionJob, { ready: compiled.value, work });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
  const { cleaningTask, ...remedies } = upkeep;
  const hour = asked.to ?? Math.floor(now / MS_PER_HOUR);
  const facts = { ...judged, site, upkeep, pump: pump.value, model: compiled.value };
  const sources = { tariff: tariff.value, changes, start, hour, remedies, task: cleaningTask?.id };
  return success({ ...facts, report: done.value.value, sources });
}
