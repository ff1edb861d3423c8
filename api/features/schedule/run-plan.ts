/** Plans the phases of a loop with its installed pump. */
import { failed, type Result } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import { limitsOf } from '../../../models/loop/limits.ts';
import type { Station } from '../../../models/schedule/phase-duty.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import type { Problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { type PlannedSchedule, scheduleJob } from './job.ts';
import type { LoopSources } from './sources.ts';

interface Planning {
  readonly phases: Pick<Schedule, 'phases' | 'emergency'>;
  /** False: the loop keeps one setting all day. */
  readonly isScheduled: boolean;
  /** The day from this instant on, and the year, are what will be asked about first. */
  readonly from: number;
  readonly year: number;
}

const stationOf = ({ site, loop, installed, pump }: LoopSources): Station => ({
  pump: { entered: pump.document, fit: fitOnLoop(pump, loop.calibration) },
  count: installed.count,
  limits: limitsOf(loop.document.limits),
  elevation: site.document.elevation,
});

export async function runPlan(
  workers: WorkerPool,
  sources: LoopSources,
  { phases, isScheduled, from, year }: Planning,
): Promise<Result<PlannedSchedule, Problem>> {
  const { model, installed, site, tariff } = sources;
  const work = {
    ...{ schedule: phases, isScheduled, station: stationOf(sources), installedSetting: installed.setting },
    ...{ from, year },
    timeZone: site.document.timeZone,
    tariff: tariff?.document ?? null,
    price: site.document.price ?? 1,
  };
  const done = await runJob(workers, scheduleJob, { ready: model, work });
  if (!done.ok) return done;
  return done.value.ok ? done.value : failed(unsolvedProblem(done.value.failure));
}
