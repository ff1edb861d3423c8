/** Computes what an assembly of an option runs, owns, takes in upkeep and risks. */

import { failed, type Result, success } from '../../../../curves/result.ts';
import { DAYS_PER_MEAN_YEAR } from '../../../../models/calendar/time-factors.ts';
import { MS_PER_DAY } from '../../../../models/calendar/zone-offsets.ts';
import type { InstalledPump } from '../../../../models/loop/loop.ts';
import { type DeviceAttention, deviceAttention } from '../../../../models/money/device-attention.ts';
import { type FailureRate, failureRate } from '../../../../models/money/failure-rate.ts';
import { toPointer } from '../../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../../http/problem.ts';
import { type Candidate, findCandidates } from '../../../question/candidates.ts';
import type { ScheduleRecord } from '../../../records/schedule/kind.ts';
import { SCHEDULES } from '../../../records/schedule/kind.ts';
import type { ComparisonContext } from '../context.ts';
import type { ReportedDuty, Running } from '../running.ts';
import { type AskedAssembly, type AssemblyLoop, assemblyLoop } from './assembly-loop.ts';
import { runningAtPower, runningOf } from './assembly-running.ts';

export interface AssemblyFigures {
  readonly asked: AskedAssembly;
  /** Null where its power is stated without one. */
  readonly found: AssemblyLoop | null;
  readonly candidate: Candidate | null;
  readonly count: number;
  readonly running: Running;
  readonly schedule: ScheduleRecord | null;
  /** The least part of its need that an outlet keeps with one pump at rest, 0..1. */
  readonly servedShare: number;
  /** Of one pump a year; null where nothing is counted. */
  readonly failures: FailureRate | null;
  readonly attention: DeviceAttention;
  readonly price: number;
  readonly lifeYears: number | null;
  readonly ageYears: number;
}

const MS_PER_YEAR = DAYS_PER_MEAN_YEAR * MS_PER_DAY;

export async function assemblyFigures(
  context: ComparisonContext,
  asked: AskedAssembly,
  path: readonly (string | number)[],
): Promise<Result<AssemblyFigures, Problem>> {
  const found = await assemblyLoop(context, asked, path);
  if (!found.ok) return found;
  const installed = found.value?.loop.document.installed;
  const candidate = await candidateOf(context, { asked, installed, path });
  if (!candidate.ok) return candidate;
  const count = candidate.value?.count ?? asked.count ?? 1;
  const schedule = await scheduleOf(context, found.value);
  const running = await run(context, {
    asked,
    found: found.value,
    candidate: candidate.value,
    schedule,
    path,
  });
  if (!running.ok) return running;
  const pump = candidate.value?.entered;
  const failures = pump?.failures === undefined ? null : failureRate(pump.failures);
  return success({
    ...{ asked, found: found.value, candidate: candidate.value, count, schedule, failures },
    running: running.value,
    servedShare: servedShare(running.value.duty),
    attention: deviceAttention({
      devices: count,
      service: pump?.service ?? null,
      failures: failures?.value ?? 0,
      minutesPerFailure: context.minutesPerFailure,
    }),
    price: count * (pump?.price ?? 0),
    lifeYears: pump?.expectedLifeYears ?? null,
    ageYears: asked.new ? 0 : (asked.ageYears ?? yearsSince(installed, context.now)),
  });
}

/** The pump that is named, else the installed one; null where power is stated and no pump. */
async function candidateOf(
  { store }: ComparisonContext,
  {
    asked,
    installed,
    path,
  }: {
    readonly asked: AskedAssembly;
    readonly installed: InstalledPump | undefined;
    readonly path: readonly (string | number)[];
  },
): Promise<Result<Candidate | null, Problem>> {
  const at = [...path, 'pump'];
  const pump = asked.pump ?? installed?.pump;
  if (pump === undefined) {
    if (asked.power !== undefined) return success(null);
    const detail = 'must be stated: the loop has no installed pump';
    return failed(invalidRequest([{ pointer: toPointer(at), detail }]));
  }
  const isInstalled = pump === installed?.pump;
  const count = asked.count ?? (isInstalled ? installed.count : 1);
  const found = await findCandidates(store, [{ pump, count, path: at, place: { pointer: toPointer(at) } }]);
  return found.ok ? success(found.value[0] ?? null) : found;
}

/** Joined loops have none of their own. */
async function scheduleOf(
  { store }: ComparisonContext,
  found: AssemblyLoop | null,
): Promise<ScheduleRecord | null> {
  const id = found?.loop.id ?? null;
  return id === null ? null : ((await store.of(SCHEDULES).get(id)) ?? null);
}

async function run(
  context: ComparisonContext,
  {
    asked,
    found,
    candidate,
    schedule,
    path,
  }: Pick<AssemblyFigures, 'asked' | 'found' | 'candidate' | 'schedule'> & {
    readonly path: readonly (string | number)[];
  },
): Promise<Result<Running, Problem>> {
  const { power, hoursPerDay } = asked;
  if (power !== undefined) return success(runningAtPower(context, { power, hoursPerDay }));
  if (found === null || candidate === null)
    throw new Error('invariant: without a power there are loop and pump');
  return runningOf(context, { asked, found, candidate, schedule, path });
}

const yearsSince = (installed: InstalledPump | undefined, now: number): number =>
  installed?.since === undefined ? 0 : Math.max(0, (now - Date.parse(installed.since)) / MS_PER_YEAR);

/** With a single pump nothing is left; the same is taken where nothing was solved. */
function servedShare(duty: ReportedDuty | null): number {
  const down = duty?.onePumpDown ?? null;
  if (down === null) return 0;
  const shares = down.outlets.map(({ flow, requiredFlow }) =>
    requiredFlow === null || requiredFlow === 0 ? 1 : Math.max(0, Math.min(1, flow / requiredFlow)),
  );
  return Math.min(1, ...shares);
}
