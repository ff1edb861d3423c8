/** Computes the setting that an assembly runs at, and what that uses and costs in a year. */
import { failed, type Result, success } from '../../../../curves/result.ts';
import { fitOnLoop } from '../../../../models/calibration/applied.ts';
import { annualUse } from '../../../../models/duty/energy.ts';
import { limitsOf } from '../../../../models/loop/limits.ts';
import { toPointer } from '../../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../../http/problem.ts';
import { runJob } from '../../../http/run-job.ts';
import { settingProblem } from '../../../question/setting-problem.ts';
import { unsolvedProblem } from '../../../question/solve-problems.ts';
import { dutyPointJob } from '../../duty-point/job.ts';
import { recommend } from '../../recommendation/recommendation.ts';
import type { ComparisonContext } from '../context.ts';
import type { ReportedDuty, Runnable, Running } from '../running.ts';
import { runningBySchedule } from './assembly-schedule.ts';

export function runningAtPower(
  { energyPrice: { price } }: ComparisonContext,
  { power, hoursPerDay }: { readonly power: number; readonly hoursPerDay: number },
): Running {
  const { annualEnergy } = annualUse({ power, standbyPower: 0, hoursPerDay, price });
  return {
    ...{ setting: null, settingFrom: 'power', feasible: true, detail: null },
    ...{ power, annualEnergy, annualCost: annualEnergy * price, energyRange: null, duty: null, tariff: null },
  };
}

export async function runningOf(
  context: ComparisonContext,
  runnable: Runnable,
): Promise<Result<Running, Problem>> {
  const { asked, found, candidate, schedule, path } = runnable;
  if (asked.setting !== undefined) {
    const wrong = settingProblem(candidate.entered, asked.setting);
    if (wrong !== null) {
      const pointer = toPointer([...path, 'setting']);
      return failed(invalidRequest([{ pointer, detail: wrong.errors?.[0]?.detail ?? wrong.detail }]));
    }
    return runningAt(context, runnable, { setting: asked.setting, from: 'stated' });
  }
  if (schedule !== null && asked.balancing === 'as-built') {
    return runningBySchedule(context, runnable, schedule, (setting) => dutyAt(context, runnable, setting));
  }
  const { installed } = found.loop.document;
  if (!asked.new && installed !== undefined && installed.pump === candidate.id) {
    return runningAt(context, runnable, { setting: installed.setting, from: 'installed' });
  }
  return runningAsRecommended(context, runnable);
}

const runningTerms = ({ energyPrice: { price }, site }: ComparisonContext, { asked }: Runnable) => ({
  price,
  hoursPerDay: asked.hoursPerDay,
  elevation: site.document.elevation,
});

const ofDuty = (duty: ReportedDuty, rest: Pick<Running, 'settingFrom' | 'feasible' | 'detail'>): Running => ({
  ...rest,
  setting: duty.setting,
  power: duty.power,
  annualEnergy: duty.annualEnergy,
  annualCost: duty.annualCost ?? 0,
  energyRange: duty.uncertainty.annualEnergy,
  duty,
  tariff: null,
});

const isServed = ({ outlets }: ReportedDuty): boolean =>
  outlets.every(({ margin }) => margin === null || margin >= -1e-9);

async function dutyAt(
  context: ComparisonContext,
  runnable: Runnable,
  setting: number,
): Promise<Result<ReportedDuty, Problem>> {
  const { found } = runnable;
  const fit = fitOnLoop(runnable.candidate, found.loop.calibration);
  const candidate = { ...runnable.candidate, fit };
  const running = runningTerms(context, runnable);
  const limits = limitsOf(found.loop.document.limits);
  const work = { candidate, setting, limits, running, reachVelocity: null };
  const done = await runJob(context.workers, dutyPointJob, { ready: found.model, work });
  if (!done.ok) return done;
  return done.value.ok ? success(done.value.value.duty) : failed(unsolvedProblem(done.value.failure));
}

async function runningAt(
  context: ComparisonContext,
  runnable: Runnable,
  { setting, from }: { readonly setting: number; readonly from: 'stated' | 'installed' },
): Promise<Result<Running, Problem>> {
  const duty = await dutyAt(context, runnable, setting);
  if (!duty.ok) return duty;
  const feasible = isServed(duty.value);
  const detail = feasible ? null : `At ${setting} % not every outlet gets what it needs.`;
  return success(ofDuty(duty.value, { settingFrom: from, feasible, detail }));
}

async function runningAsRecommended(
  context: ComparisonContext,
  runnable: Runnable,
): Promise<Result<Running, Problem>> {
  const { asked, found, candidate, path } = runnable;
  const place = { pointer: toPointer(path) };
  const recommended = await recommend(context, {
    site: context.site,
    loop: found.loop,
    candidates: [candidate],
    options: {
      ...runningTerms(context, runnable),
      balancing: asked.balancing,
      rankingLimit: 1,
      detail: 'plain',
    },
    tariff: null,
    places: { loop: place, balancing: { pointer: toPointer([...path, 'balancing']) }, currency: place },
    system: context.system,
  });
  if (!recommended.ok) return recommended;
  const { best, rejected } = recommended.value.body;
  if (best !== null) {
    return success(ofDuty(best, { settingFrom: 'recommended', feasible: true, detail: null }));
  }
  const highest = await dutyAt(context, runnable, candidate.entered.settings.max);
  if (!highest.ok) return highest;
  const detail = rejected[0]?.detail ?? 'No setting serves.';
  return success(ofDuty(highest.value, { settingFrom: 'highest', feasible: false, detail }));
}
