/** Plans a loop with its installed pump, phases and prices, ready to give settings. */

import { failed, type Result, success } from '../../../curves/result.ts';
import { hasRequirement } from '../../../models/network/margins.ts';
import type { Fallback } from '../../../models/schedule/fallback.ts';
import type { SchedulePlan } from '../../../models/schedule/phase-plan.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { flatRate, type Rates } from '../../../models/tariff/rates.ts';
import { siteYear } from '../../clock/site-time.ts';
import { type Basis, basisOf } from '../../fields/basis.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { findLoop } from '../../records/loop/kind.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import { SCHEDULES } from '../../records/schedule/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import type { PlannedSchedule } from './job.ts';
import { runPlan } from './run-plan.ts';
import { type LoopSources, loadSources, ratesFor } from './sources.ts';

export interface PlannedLoop {
  readonly sources: LoopSources;
  readonly schedule: ScheduleRecord | null;
  readonly plan: SchedulePlan;
  readonly fallback: Fallback;
  /** Of a tariff or a flat price; without either, volumes are moved at the least energy. */
  readonly rates: Rates;
  readonly isPriced: boolean;
  readonly basis: Basis;
  /** What distinguishes two answers besides the basis that they state. */
  readonly versions: unknown;
}

/** A loop that keeps one setting all day. */
const ALL_DAY: Pick<Schedule, 'phases'> = { phases: [{ name: 'all day', from: '00:00', factor: 1 }] };

/** Only a loop without a schedule is planned by its own requirements. */
function requirementProblem({ model }: LoopSources, schedule: unknown): Problem | null {
  if (schedule !== null || hasRequirement(model.system.outlets)) return null;
  const detail = 'No outlet of the loop requires a flow above 0: state a requiredFlow or a reach.';
  return problem('no-requirement', detail);
}

/** `schedule`: that which was worked out; null: the loop keeps one setting all day. */
export function planned(
  sources: LoopSources,
  schedule: ScheduleRecord | null,
  worked: PlannedSchedule,
): PlannedLoop {
  const { loop, pump, site, tariff } = sources;
  const rates = ratesFor(sources);
  return {
    sources,
    schedule,
    ...worked,
    rates: rates ?? flatRate(1),
    isPriced: rates !== null,
    basis: basisOf({ loop, pumps: [pump] }),
    versions: [
      site.version,
      schedule === null ? null : [schedule.version, schedule.createdAt],
      tariff === null ? null : [tariff.id, tariff.version],
    ],
  };
}

export interface PlanDeps {
  readonly store: SiteStore;
  readonly loops: CompiledLoops;
  readonly workers: WorkerPool;
  readonly clock: () => Date;
}

/** The loop of an id with its schedule, planned. */
export async function plannedLoop(deps: PlanDeps, id: string): Promise<Result<PlannedLoop, Problem>> {
  const loop = await findLoop(deps.store, id, null);
  if (!loop.ok) return loop;
  const schedule = (await deps.store.of(SCHEDULES).get(id)) ?? null;
  const sources = await loadSources(deps, loop.value, schedule?.document.tariff ?? null);
  if (!sources.ok) return sources;
  const lacking = requirementProblem(sources.value, schedule);
  if (lacking !== null) return failed(lacking);
  const from = deps.clock().getTime();
  const year = siteYear(sources.value.site.document.timeZone, from);
  const phases = schedule?.document ?? ALL_DAY;
  const planning = { phases, isScheduled: schedule !== null, from, year };
  const worked = await runPlan(deps.workers, sources.value, planning);
  return worked.ok ? success(planned(sources.value, schedule, worked.value)) : worked;
}
