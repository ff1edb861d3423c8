/** Sums the loops of a site page by page, in memory that does not grow with them. */

import { type Result, success } from '../../../curves/result.ts';
import { MONTHS_PER_YEAR } from '../../../models/calendar/time-factors.ts';
import { attentionOf } from '../../../models/maintenance/attention.ts';
import type { LoopFigures } from '../../../models/site-summary/loop-figures.ts';
import {
  NO_TOTALS,
  type SiteTotals,
  withLoop,
  withoutPump,
} from '../../../models/site-summary/site-totals.ts';
import type { Problem } from '../../http/problem.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { TariffRecord } from '../../records/tariff/kind.ts';
import { TASKS } from '../../records/task/kind.ts';
import { recordReference } from '../../store/record-reference.ts';
import type { SiteStore } from '../../store/store.ts';
import type { PageStart } from '../../store/versions.ts';
import { pauseAfter } from '../../threads/pause.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { digestOfVersions, readSummaryPage, type SummaryLoop, type SummaryPage } from './page-of-loops.ts';
import { type LoopAnswers, SLICE, type SliceTerms, sliceFigures } from './run-slices.ts';

export interface SummaryDeps {
  readonly store: SiteStore;
  readonly clock: () => Date;
  readonly workers: WorkerPool;
  readonly answers: LoopAnswers;
}

/** Hours, and money for parts. */
export interface YearlyWork {
  readonly hours: number;
  readonly parts: number;
}

export interface SummedLoops {
  readonly totals: SiteTotals;
  readonly devices: number;
  /** Of the pumps that are installed, in hours and money for parts a year. */
  readonly service: YearlyWork;
  /** Of the wet-end services that are stored as checks, where no installed pump states its own. */
  readonly storedService: YearlyWork;
  /** Tells what all figures follow from. */
  readonly versions: string;
}

const NO_WORK: YearlyWork = { hours: 0, parts: 0 };

const EVERY_PAGE = 0;

export async function sumLoops(
  deps: SummaryDeps,
  { site, ...asked }: SliceTerms & { readonly site: SiteRecord },
): Promise<Result<SummedLoops, Problem>> {
  const pumps = Math.max(1, asked.pumps.length);
  const limit = Math.max(1, Math.min(SLICE.loops, Math.floor(SLICE.judged / pumps)));
  const tariffs = new Map<string, TariffRecord>();
  let summed: SummedLoops = {
    ...{ totals: NO_TOTALS, devices: 0, versions: asked.shared },
    ...{ service: NO_WORK, storedService: NO_WORK },
  };
  for (let after: PageStart | null | 'begin' = 'begin'; after !== null; ) {
    const from: PageStart | null = after === 'begin' ? null : after;
    const page: SummaryPage = await readSummaryPage(deps.store, { site, limit, after: from, tariffs });
    const figures = await sliceFigures(deps, asked, page.installed);
    if (!figures.ok) return figures;
    for (const { id, version } of page.withoutPump) {
      const versions = digestOfVersions([summed.versions, id, version]);
      summed = { ...summed, totals: withoutPump(summed.totals), versions };
    }
    for (const [place, loop] of page.installed.entries()) {
      summed = withOne(summed, loop, figures.value[place] ?? null);
    }
    const storedService = added(summed.storedService, await storedServiceOf(deps.store, page));
    summed = { ...summed, storedService };
    after = page.next;
    // Where all is known already, nothing else lets others have their turn.
    await pauseAfter(EVERY_PAGE);
  }
  return success(summed);
}

export const added = (a: YearlyWork, b: YearlyWork): YearlyWork => ({
  hours: a.hours + b.hours,
  parts: a.parts + b.parts,
});

/** A pump that states its service and a check that is stored for it are the same work, which counts once. */
function storedServiceOf(store: SiteStore, { installed, withoutPump }: SummaryPage): Promise<YearlyWork> {
  const unstated = installed.filter(({ slice }) => slice.installed.pump.entered.service === undefined);
  const loops = [...unstated.map(({ record }) => record.id), ...withoutPump.map(({ id }) => id)];
  return store.of(TASKS).totals({ loops, kind: 'wet-end-service', today: 0 });
}

function withOne(
  summed: SummedLoops,
  { record, slice, versions }: SummaryLoop,
  figures: LoopFigures | null,
): SummedLoops {
  const { count, setting, pump } = slice.installed;
  const loop = recordReference(record);
  const { service } = pump.entered;
  const timesAYear = service === undefined ? 0 : (count * MONTHS_PER_YEAR) / service.everyMonths;
  const { hours, parts } = attentionOf(service === undefined ? [] : [{ ...service, timesAYear }], null);
  const entry = { loop, figures, isScheduled: slice.schedule !== null, count, setting };
  return {
    totals: withLoop(summed.totals, entry),
    devices: summed.devices + count,
    service: added(summed.service, { hours, parts }),
    storedService: summed.storedService,
    versions: digestOfVersions([summed.versions, versions]),
  };
}
