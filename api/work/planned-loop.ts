/** A loop with its installed pump, phases and prices, made ready for telling settings. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { InstalledPump } from '../../models/loop.ts';
import { hasRequirement } from '../../models/margins.ts';
import { MODEL_VERSION } from '../../models/model-version.ts';
import { fallbackSetting } from '../../models/schedule/fallback.ts';
import type { Station } from '../../models/schedule/phase-duty.ts';
import { planSchedule, type SchedulePlan } from '../../models/schedule/phase-plan.ts';
import type { Schedule } from '../../models/schedule/schedule.ts';
import { DEFAULT_LIMITS } from '../../models/selection/options.ts';
import { solving } from '../../models/solve-failure.ts';
import { flatRate, type Rates, ratesOf } from '../../models/tariff/rates.ts';
import { type Problem, problem } from '../http/problem.ts';
import type {
  LoopRecord,
  PumpRecord,
  ScheduleRecord,
  SiteRecord,
  Store,
  TariffRecord,
} from '../store/store.ts';
import { findLoop, findPump, findSite, findTariff } from './find-records.ts';
import type { LoopCache, ReadyLoop } from './loop-cache.ts';
import { unsolvedProblem } from './selection-problems.ts';

/** All that phases, settings and figures follow from. */
export interface LoopSources {
  readonly site: SiteRecord;
  readonly loop: LoopRecord;
  readonly installed: InstalledPump;
  readonly pump: PumpRecord;
  readonly ready: ReadyLoop;
  readonly tariff: TariffRecord | null;
}

export interface PlannedLoop {
  readonly sources: LoopSources;
  readonly schedule: ScheduleRecord | null;
  readonly plan: SchedulePlan;
  readonly fallback: number;
  /** Of a tariff or a flat price; without either, volumes are moved at the least energy. */
  readonly rates: Rates;
  readonly isPriced: boolean;
  readonly basis: {
    readonly modelVersion: string;
    readonly loop: { readonly id: string; readonly version: number };
    readonly pumps: readonly { readonly id: string; readonly version: number }[];
  };
  /** What tells two answers apart besides the basis that they state. */
  readonly versions: unknown;
}

/** A loop that keeps one setting all day. */
const ALL_DAY: Pick<Schedule, 'phases'> = { phases: [{ name: 'all day', from: '00:00', factor: 1 }] };

/** `tariffId`: that of a schedule; null: the site's. */
export async function loadSources(
  { store, loops }: { readonly store: Store; readonly loops: LoopCache },
  loop: LoopRecord,
  tariffId: string | null,
): Promise<Result<LoopSources, Problem>> {
  const { installed } = loop.document;
  if (installed === undefined) {
    return failed(problem('no-installed-pump', 'The loop has no installed pump to set.'));
  }
  const site = await findSite(store);
  const pump = await findPump(store, installed.pump, null);
  if (!pump.ok) return pump;
  const ready = loops.ready(loop, []);
  if (!ready.ok) return ready;
  const id = tariffId ?? site.document.tariff;
  const tariff = id === null ? success(null) : await findTariff(store, id, { pointer: '/tariff' });
  if (!tariff.ok) return tariff;
  return success({ site, loop, installed, pump: pump.value, ready: ready.value, tariff: tariff.value });
}

/** Null where nothing is priced. */
export function ratesFor({ site, tariff }: Pick<LoopSources, 'site' | 'tariff'>): Rates | null {
  if (tariff !== null) return ratesOf(tariff.document);
  const { price } = site.document;
  return price === null ? null : flatRate(price);
}

export const stationOf = ({ site, installed, pump }: LoopSources): Station => ({
  pump: { pump: pump.document, fit: pump.fit },
  count: installed.count,
  limits: DEFAULT_LIMITS,
  elevation: site.document.elevation,
});

/** Without a schedule: the recommendation for the installed pump, all day. */
export function planLoop(
  sources: LoopSources,
  schedule: ScheduleRecord | null,
): Result<PlannedLoop, Problem> {
  const { ready, loop, pump, site, tariff } = sources;
  if (schedule === null && !hasRequirement(ready.model.system.outlets)) {
    const detail = 'No outlet of the loop requires a flow above 0: state a requiredFlow or a reach.';
    return failed(problem('no-requirement', detail));
  }
  const solved = solving(() => {
    const plan = planSchedule(schedule?.document ?? ALL_DAY, ready.model, stationOf(sources));
    return { plan, fallback: fallbackSetting(plan) };
  });
  if (!solved.ok) return failed(unsolvedProblem(solved.failure));
  const rates = ratesFor(sources);
  const basis = {
    modelVersion: MODEL_VERSION,
    loop: { id: loop.id, version: loop.version },
    pumps: [{ id: pump.id, version: pump.version }],
  };
  return success({
    sources,
    schedule,
    ...solved.value,
    rates: rates ?? flatRate(1),
    isPriced: rates !== null,
    basis,
    versions: [
      site.version,
      schedule === null ? null : [schedule.version, schedule.createdAt],
      tariff === null ? null : [tariff.id, tariff.version],
    ],
  });
}

/** The loop of an id with its schedule, planned. */
export async function plannedLoop(
  parts: { readonly store: Store; readonly loops: LoopCache },
  key: { readonly siteId: string; readonly id: string },
): Promise<Result<PlannedLoop, Problem>> {
  const loop = await findLoop(parts.store, key.id, null);
  if (!loop.ok) return loop;
  const schedule = (await parts.store.getSchedule(key)) ?? null;
  const sources = await loadSources(parts, loop.value, schedule?.document.tariff ?? null);
  return sources.ok ? planLoop(sources.value, schedule) : sources;
}
