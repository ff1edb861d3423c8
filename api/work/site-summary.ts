/** The figures of a whole site: page by page of its loops, in worker threads, in memory that does not grow with them. */
import { LRUCache } from 'lru-cache';
import { failed, type Result, success } from '../../curves/result.ts';
import { dayAt } from '../../models/calendar/zone-offsets.ts';
import { type Attention, attentionOf, pricedAttention } from '../../models/maintenance/attention.ts';
import { MODEL_VERSION } from '../../models/model-version.ts';
import { type LoopFigures, worthOfSaved } from '../../models/site-summary/loop-figures.ts';
import { NO_TOTALS, type SiteTotals, withLoop, withoutPump } from '../../models/site-summary/site-totals.ts';
import { siteYear } from '../calendar/site-time.ts';
import { zoneAround } from '../calendar/zone.ts';
import { type Problem, problem } from '../http/problem.ts';
import type { PumpRecord, SiteRecord, Store, TariffRecord } from '../store/store.ts';
import type { PageStart } from '../store/stored.ts';
import { findSite } from './find-records.ts';
import { runHeavy } from './heavy-problem.ts';
import type { HeavyWork } from './heavy-work.ts';
import { digestOfVersions, readSummaryPage, type SummaryLoop } from './summary-page.ts';
import type { StoredPump, SummarySlice } from './summary-slice.ts';
import { type TariffPrice, tariffPrice } from './tariff-price.ts';

export interface SiteSummary {
  readonly site: SiteRecord;
  readonly tariff: TariffPrice | null;
  readonly totals: SiteTotals;
  /** Pumps that the savings may name, by the place of the candidate. */
  readonly pumps: readonly PumpRecord[];
  readonly devices: number;
  readonly attention: { readonly service: Attention; readonly tasks: Attention; readonly all: Attention };
  /** Tells what all figures follow from. */
  readonly versions: string;
}

export interface SummaryMeans {
  readonly store: Store;
  readonly clock: () => Date;
  readonly heavyWork: HeavyWork;
  readonly kept: SummaryCache;
}

export type SummaryCache = LRUCache<string, { readonly figures: LoopFigures | null }>;

/** Figures of loops, some hundred bytes each, by the versions of all that they follow from. */
const KEPT_LOOPS = 20_000;

export const summaryCache = (): SummaryCache => new LRUCache({ max: KEPT_LOOPS });

const LOOPS_MOST = 20_000;
/** Loops times pumps that one summary judges. */
const JUDGED_MOST = 1_000_000;
/** Loops and pumps of one job: some tenths of a second, between which other long work gets its turn. */
const SLICE = { loops: 25, pumps: 200, judged: 1_000 } as const;

const MONTHS_PER_YEAR = 12;

export async function siteSummary(means: SummaryMeans): Promise<Result<SiteSummary, Problem>> {
  const { store, clock } = means;
  const site = await findSite(store);
  const tariff = await tariffPrice(means, site, {}, { parameter: 'price' });
  if (!tariff.ok) return tariff;
  const all = await store.allPumps(site.id);
  if (all.outcome === 'too-many') return failed(tooMuch('pumps', all));
  const pumps = all.records;
  const now = clock().getTime();
  const year = siteYear(site.document.timeZone, now);
  const price = tariff.value?.price ?? site.document.price;
  const terms = { ...site.document, price, flatPrice: site.document.price, year };
  const shared = digestOfVersions([
    ...[MODEL_VERSION, site.version, tariff.value, year],
    ...pumps.map(({ id, version }) => [id, version]),
  ]);
  const summed = await sumLoops(means, { site, pumps, terms, shared });
  if (!summed.ok) return summed;
  const { totals, devices, service, versions } = summed.value;
  const today = dayAt(zoneAround(site.document.timeZone, year), now);
  const done = await store.maintenanceTotals({ siteId: site.id, today });
  const { labourRate } = site.document;
  const both = { hours: service.hours + done.hours, parts: service.parts + done.parts };
  return success({
    ...{ site, pumps, totals, devices, tariff: tariff.value },
    attention: {
      service: pricedAttention(service, labourRate),
      tasks: pricedAttention(done, labourRate),
      all: pricedAttention(both, labourRate),
    },
    versions: digestOfVersions([versions, done]),
  });
}

interface Summing {
  readonly site: SiteRecord;
  readonly pumps: readonly PumpRecord[];
  readonly terms: Pick<SummarySlice, 'price' | 'flatPrice' | 'elevation' | 'timeZone' | 'year'>;
  /** Of all that the figures of every loop follow from. */
  readonly shared: string;
}

interface Summed {
  readonly totals: SiteTotals;
  readonly devices: number;
  readonly service: { readonly hours: number; readonly parts: number };
  readonly versions: string;
}

async function sumLoops(means: SummaryMeans, summing: Summing): Promise<Result<Summed, Problem>> {
  const { site, pumps, shared } = summing;
  const limit = Math.max(1, Math.min(SLICE.loops, Math.floor(SLICE.judged / Math.max(1, pumps.length))));
  const tariffs = new Map<string, TariffRecord>();
  let summed: Summed = { totals: NO_TOTALS, devices: 0, service: { hours: 0, parts: 0 }, versions: shared };
  let after: PageStart | null = null;
  do {
    const page = await readSummaryPage(means.store, { site, limit, after, tariffs });
    const figures = await figuresOf(means, summing, page.installed);
    if (!figures.ok) return figures;
    for (const _ of page.withoutPump) summed = { ...summed, totals: withoutPump(summed.totals) };
    for (const [place, loop] of page.installed.entries()) {
      summed = added(summed, loop, figures.value[place] ?? null);
    }
    const { loops } = summed.totals;
    const judged = loops * pumps.length;
    if (loops > LOOPS_MOST) return failed(tooMuch('loops', { limit: LOOPS_MOST, actual: loops }));
    if (judged > JUDGED_MOST) return failed(tooMuch('loops times pumps', { limit: JUDGED_MOST, actual: judged }));
    after = page.next;
  } while (after !== null);
  return success(summed);
}

function added(summed: Summed, { record, slice, versions }: SummaryLoop, figures: LoopFigures | null): Summed {
  const { count, setting, pump } = slice.installed;
  const loop = { id: record.id, name: record.name };
  const entry = { loop, figures, isScheduled: slice.schedule !== null, count, setting };
  const { service } = pump.pump;
  const works =
    service === undefined
      ? []
      : [{ ...service, timesAYear: (count * MONTHS_PER_YEAR) / service.everyMonths }];
  const { hours, parts } = attentionOf(works, null);
  return {
    totals: withLoop(summed.totals, entry),
    devices: summed.devices + count,
    service: { hours: summed.service.hours + hours, parts: summed.service.parts + parts },
    versions: digestOfVersions([summed.versions, versions]),
  };
}

/** One a loop; those that were worked out before are not worked out again. */
async function figuresOf(
  { heavyWork, kept }: SummaryMeans,
  { pumps, terms, shared }: Summing,
  loops: readonly SummaryLoop[],
): Promise<Result<readonly (LoopFigures | null)[], Problem>> {
  const keyOf = ({ versions }: SummaryLoop): string => `${shared} ${versions}`;
  const known = new Map(loops.map((loop) => [loop, kept.get(keyOf(loop))]));
  const missing = loops.filter((loop) => known.get(loop) === undefined);
  if (missing.length > 0) {
    const worked = await worked_(heavyWork, { pumps, terms }, missing);
    if (!worked.ok) return worked;
    for (const [place, loop] of missing.entries()) {
      const figures = worked.value[place] ?? null;
      known.set(loop, { figures });
      kept.set(keyOf(loop), { figures });
    }
  }
  return success(loops.map((loop) => known.get(loop)?.figures ?? null));
}
