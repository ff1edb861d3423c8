/** The plan of a loop's phases, worked out here or, where that is long, in a thread of its own. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import { fallbackSetting } from '../../../models/schedule/fallback.ts';
import type { Station } from '../../../models/schedule/phase-duty.ts';
import { planSchedule, type SchedulePlan } from '../../../models/schedule/phase-plan.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { DEFAULT_LIMITS } from '../../../models/selection/options.ts';
import type { Problem } from '../../http/problem.ts';
import { runHeavy } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { HeavyWork } from '../../threads/worker-pool.ts';
import { isLongPlan } from './job.ts';
import type { LoopSources } from './sources.ts';

export interface WorkedPlan {
  readonly plan: SchedulePlan;
  readonly fallback: number;
}

interface Planning {
  readonly phases: Pick<Schedule, 'phases' | 'emergency'>;
  /** The day from this instant on, and the year, are what will be asked about first. */
  readonly from: number;
  readonly year: number;
}

const stationOf = ({ site, loop, installed, pump }: LoopSources): Station => ({
  pump: { entered: pump.document, fit: fitOnLoop(pump, loop.calibration) },
  count: installed.count,
  limits: DEFAULT_LIMITS,
  elevation: site.document.elevation,
});

export async function workPlan(
  heavyWork: HeavyWork,
  sources: LoopSources,
  { phases, from, year }: Planning,
): Promise<Result<WorkedPlan, Problem>> {
  const { ready, pump, installed, site, tariff } = sources;
  const station = stationOf(sources);
  if (!isLongPlan(ready.model, phases, pump.document)) {
    const solved = solving(() => {
      const plan = planSchedule(phases, ready.model, station);
      return { plan, fallback: fallbackSetting(plan) };
    });
    return solved.ok ? solved : failed(unsolvedProblem(solved.failure));
  }
  const work = {
    ...{ schedule: phases, station, installedSetting: installed.setting, from, year },
    timeZone: site.document.timeZone,
    tariff: tariff?.document ?? null,
    price: site.document.price ?? 1,
  };
  const done = await runHeavy(heavyWork, 'plan', { loop: ready.model.entered, work });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
  const { figures, fallback } = done.value.value;
  return success({ plan: planSchedule(phases, ready.model, station, figures), fallback });
}
