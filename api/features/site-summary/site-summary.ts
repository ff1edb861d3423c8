/** Computes the figures of a whole site. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { dayAt } from '../../../models/calendar/zone-offsets.ts';
import { type Attention, pricedAttention } from '../../../models/maintenance/attention.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import { siteYear } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { type TariffPrice, tariffPrice } from '../../question/tariff-price.ts';
import { LOOPS } from '../../records/loop/kind.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import { PUMPS } from '../../records/pump/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import { TASKS } from '../../records/task/kind.ts';
import { digestOfVersions } from './page-of-loops.ts';
import { added, type SummaryDeps, type SummedLoops, sumLoops, type YearlyWork } from './sum-loops.ts';

export interface SiteSummary extends Omit<SummedLoops, 'service' | 'storedService'> {
  readonly site: SiteRecord;
  readonly tariff: TariffPrice | null;
  /** Money per kWh of a loop that runs alike all day; null: not known. */
  readonly price: number | null;
  readonly year: number;
  /** Those that savings name, by the place of the candidate. */
  readonly pumps: readonly PumpRecord[];
  readonly attention: { readonly service: Attention; readonly tasks: Attention; readonly all: Attention };
}

const LOOPS_MOST = 20_000;
/** Loops times pumps: some minutes of work. */
const JUDGED_MOST = 500_000;

export async function siteSummary(deps: SummaryDeps): Promise<Result<SiteSummary, Problem>> {
  const { store, clock } = deps;
  const site = await findSite(store);
  const tariff = await tariffPrice(deps, site, {}, { parameter: 'price' });
  if (!tariff.ok) return tariff;
  const all = await store.of(PUMPS).all();
  if (all.outcome === 'too-many') return failed(tooMuch('stored pumps', all));
  const pumps = all.records;
  const beyond = tooLarge(await store.of(LOOPS).count(), pumps.length);
  if (beyond !== null) return failed(beyond);
  const now = clock().getTime();
  const { timeZone, elevation, labourRate } = site.document;
  const year = siteYear(timeZone, now);
  const price = tariff.value?.price ?? site.document.price;
  const terms = { timeZone, elevation, price, flatPrice: site.document.price, year };
  const choice = pumps.map(({ id, version }) => [id, version]);
  const shared = digestOfVersions([MODEL_VERSION, site.version, tariff.value, year, choice]);
  const summed = await sumLoops(deps, { site, pumps, terms, shared });
  if (!summed.ok) return summed;
  const { service, storedService, versions, ...figures } = summed.value;
  const today = dayAt(zoneAround(timeZone, year), now);
  const tasks = [
    await store.of(TASKS).totals({ today, otherThan: 'wet-end-service' }),
    await store.of(TASKS).totals({ today, kind: 'wet-end-service', loop: null }),
  ].reduce<YearlyWork>(added, storedService);
  const attention = {
    service: pricedAttention(service, labourRate),
    tasks: pricedAttention(tasks, labourRate),
    all: pricedAttention(added(service, tasks), labourRate),
  };
  return success({
    ...{ ...figures, site, tariff: tariff.value, price, year, pumps, attention },
    versions: digestOfVersions([versions, tasks.hours, tasks.parts]),
  });
}

function tooLarge(loops: number, pumps: number): Problem | null {
  if (loops > LOOPS_MOST) return tooMuch('loops', { limit: LOOPS_MOST, actual: loops });
  const actual = loops * pumps;
  return actual > JUDGED_MOST ? tooMuch('loops times stored pumps', { limit: JUDGED_MOST, actual }) : null;
}

const tooMuch = (
  what: string,
  { limit, actual }: { readonly limit: number; readonly actual: number },
): Problem =>
  problem('limit-exceeded', `The site has ${actual} ${what}, more than one summary judges.`, {
    limit,
    actual,
  });
