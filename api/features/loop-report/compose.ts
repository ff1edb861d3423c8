/** Gathers all that the report of a stored loop shows. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import type { Problem } from '../../http/problem.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { answerCondition } from '../condition/condition.ts';
import { answerDutyPoint } from '../duty-point/duty-point.ts';
import { type ChosenPump, chosenChartFigures, type LoopChartDeps } from '../loop-chart/chart-figures.ts';
import { storedRecommendation } from '../recommendation/stored-recommendation.ts';
import type { DayFigures } from '../schedule/day.ts';
import { dayFigures, siteDay } from '../schedule/day-figures.ts';
import type { PlanCache } from '../schedule/plan-cache.ts';
import type { LoopReport, Measured, ReportedDuty } from './report/report-figures.ts';

interface ReportQuestion {
  readonly loop: LoopRecord;
  /** Undefined: all stored pumps. */
  readonly pumps: readonly string[] | undefined;
  readonly count: number;
  readonly system: UnitSystem;
}

type LoopReportDeps = LoopChartDeps & { readonly plans: PlanCache };

interface Reported {
  readonly report: LoopReport;
  readonly basis: unknown;
}

async function presentDuty(
  deps: LoopChartDeps,
  { loop, system }: ReportQuestion,
): Promise<Result<{ readonly duty: ReportedDuty; readonly basis: unknown } | null, Problem>> {
  if (loop.document.installed === undefined) return success(null);
  const answered = await answerDutyPoint(deps, { loop, asked: {}, system });
  if (!answered.ok) return answered;
  return success({ duty: answered.value.body, basis: answered.value.validator.basis });
}

/** Null where no pump is installed, or nothing was measured since it was. */
async function measuredCondition(
  deps: LoopChartDeps,
  { loop }: ReportQuestion,
): Promise<Result<{ readonly body: Measured; readonly basis: unknown } | null, Problem>> {
  if (loop.document.installed === undefined) return success(null);
  const answered = await answerCondition(deps, { loop, asked: {} });
  if (!answered.ok) return answered;
  const { body, validator } = answered.value;
  return success(body.readings.total === 0 ? null : { body, basis: validator.basis });
}

/** Null where the loop has no schedule. */
async function scheduledDay(
  { store, plans }: LoopReportDeps,
  { loop, system }: ReportQuestion,
  day: number,
): Promise<Result<{ readonly figures: DayFigures; readonly basis: unknown } | null, Problem>> {
  if (loop.document.installed === undefined) return success(null);
  const found = await plans.find(store, loop.id);
  if (!found.ok) return found;
  const { planned } = found.value;
  if (planned.schedule === null) return success(null);
  const figures = solving(() => dayFigures(found.value, { day, system }));
  if (!figures.ok) return failed(unsolvedProblem(figures.failure));
  return success({ figures: figures.value, basis: [planned.basis, planned.versions] });
}

/** The recommended pump; where none serves, the one that was asked about, at its highest setting. */
function chosenPump(best: ReportedDuty | null, { pumps, count }: ReportQuestion): ChosenPump | null {
  const id = best?.pump.id ?? null;
  if (best !== null && id !== null) {
    return { pump: id, setting: best.setting, count: best.count, origin: 'recommended' };
  }
  const [pump] = pumps ?? [];
  return pump === undefined ? null : { pump, setting: undefined, count, origin: 'highest' };
}

export async function loopReportOf(
  deps: LoopReportDeps,
  question: ReportQuestion,
): Promise<Result<Reported, Problem>> {
  const { loop, system } = question;
  const { store, clock, version } = deps;
  const recommended = await storedRecommendation(deps, question);
  if (!recommended.ok) return recommended;
  const { body: recommendation, validator } = recommended.value;
  const present = await presentDuty(deps, question);
  if (!present.ok) return present;
  const measured = await measuredCondition(deps, question);
  if (!measured.ok) return measured;
  const charted = await chosenChartFigures(deps, question, chosenPump(recommendation.best, question));
  if (!charted.ok) return charted;
  const site = await findSite(store);
  const day = siteDay(site.document.timeZone, clock().getTime());
  const scheduled = await scheduledDay(deps, question, day);
  if (!scheduled.ok) return scheduled;
  const others = [present, measured, charted, scheduled].map(({ value }) => value?.basis);
  return success({
    report: {
      site,
      loop,
      recommendation,
      present: present.value?.duty ?? null,
      measured: measured.value?.body ?? null,
      chart: charted.value.figures,
      day: scheduled.value?.figures ?? null,
      date: textOfDate(civilDate(day)),
      program: version,
      system,
    },
    basis: [version, day, validator.basis, others],
  });
}
