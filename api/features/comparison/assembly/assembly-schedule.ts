/** Computes what an assembly uses and costs in a year by the schedule of its loop. */

import { failed, type Result, success } from '../../../../curves/result.ts';
import type { InstalledPump } from '../../../../models/loop/loop.ts';
import { WATTS_PER_KILOWATT } from '../../../../models/physics/unit-factors.ts';
import { flatRate } from '../../../../models/tariff/rates.ts';
import type { Problem } from '../../../http/problem.ts';
import { unsolvedProblem } from '../../../question/solve-problems.ts';
import type { ScheduleRecord } from '../../../records/schedule/kind.ts';
import type { SiteRecord } from '../../../records/site/kind.ts';
import type { TariffRecord } from '../../../records/tariff/kind.ts';
import { findTariff } from '../../../records/tariff/kind.ts';
import { runPlan } from '../../schedule/run-plan.ts';
import { type LoopSources, ratesFor } from '../../schedule/sources.ts';
import { scheduleYear, type YearFigures } from '../../schedule/year.ts';
import { asRecord, type ComparisonContext } from '../context.ts';
import type { ReportedDuty, Runnable, Running } from '../running.ts';

/** The pump of the assembly in place of the installed one, through every hour of the year. */
export async function runningBySchedule(
  context: ComparisonContext,
  runnable: Runnable,
  schedule: ScheduleRecord,
  dutyAt: (setting: number) => Promise<Result<ReportedDuty, Problem>>,
): Promise<Result<Running, Problem>> {
  const priced = await pricedBy(context, schedule);
  if (!priced.ok) return priced;
  const sources = { ...priced.value, ...sourcesOf(runnable) };
  const planning = { phases: schedule.document, isScheduled: true, from: context.now, year: context.year };
  const worked = await runPlan(context.workers, sources, planning);
  if (!worked.ok) return worked;
  const { plan } = worked.value;
  const rates = ratesFor(sources) ?? flatRate(context.energyPrice.price);
  const figures = scheduleYear({ plan, rates, sources }, context.year);
  if (!figures.ok) return failed(unsolvedProblem(figures.failure));
  const { phases } = figures.value;
  const usual = phases.toSorted((a, b) => b.hours - a.hours)[0]?.usualSetting ?? sources.installed.setting;
  const short = plan.phases.filter((_, place) => phases[place]?.feasible === false);
  const atUsual = usual > 0 ? await dutyAt(usual) : null;
  const duty = atUsual?.ok ? atUsual.value : null;
  const { tariff } = priced.value;
  return success({
    ...useOf(figures.value),
    energyRange: uncertaintyOfYear(figures.value, duty),
    // One that was sent along has no version.
    tariff: schedule.document.tariff === tariff?.id ? tariff : null,
    setting: usual,
    settingFrom: 'schedule',
    feasible: short.length === 0,
    detail: short.length === 0 ? null : `Not served: ${short.map(({ phase }) => phase.name).join(', ')}.`,
    duty,
  });
}

/** A year is as uncertain as its usual setting. */
function uncertaintyOfYear({ total }: YearFigures, duty: ReportedDuty | null): Running['energyRange'] {
  if (duty === null || duty.annualEnergy === 0) return null;
  const scale = total.energy / duty.annualEnergy;
  const { low, high } = duty.uncertainty.annualEnergy;
  return { low: scale * low, high: scale * high };
}

const useOf = ({ total, hours }: YearFigures) => ({
  power: hours === 0 ? 0 : (WATTS_PER_KILOWATT * total.energy) / hours,
  annualEnergy: total.energy,
  annualCost: total.cost,
});

/** A plan takes records; where a pump came with the request, its id and times mean nothing. */
function sourcesOf({ found, candidate }: Runnable): Omit<LoopSources, 'site' | 'tariff'> {
  const { id, version, document } = found.loop;
  if (id === null || version === null) throw new Error('invariant: a schedule is that of a stored loop');
  const installed: InstalledPump = {
    pump: candidate.id ?? '',
    count: candidate.count,
    setting: document.installed?.setting ?? candidate.entered.settings.max,
  };
  const times = { createdAt: 0, updatedAt: 0 };
  const pump = { id: candidate.id ?? '', version: candidate.version ?? 0, name: candidate.entered.name };
  return {
    installed,
    model: found.model,
    loop: {
      ...times,
      id,
      version,
      name: document.name,
      document,
      calibration: found.loop.calibration ?? null,
    },
    pump: { ...times, ...pump, document: candidate.entered, fit: candidate.fit },
  };
}

/** The request's price goes before that of the schedule, and that before the site's. */
async function pricedBy(
  { energyPrice, site, store }: ComparisonContext,
  schedule: ScheduleRecord,
): Promise<Result<{ readonly site: SiteRecord; readonly tariff: TariffRecord | null }, Problem>> {
  const own = energyPrice.tariff === null ? null : asRecord(energyPrice.tariff);
  if (energyPrice.isStated) {
    const document = { ...site.document, price: energyPrice.price };
    return success({ site: { ...site, document }, tariff: own });
  }
  const id = schedule.document.tariff;
  if (id === null) return success({ site, tariff: own });
  const found = await findTariff(store, id, null);
  return found.ok ? success({ site, tariff: found.value }) : found;
}
