/** Names the stored versions that a comparison follows from, and says whether they still hold. */

import { MODEL_VERSION } from '../../../models/model-version.ts';
import { LOOPS } from '../../records/loop/kind.ts';
import { PUMPS } from '../../records/pump/kind.ts';
import { SCHEDULES } from '../../records/schedule/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import { TARIFFS } from '../../records/tariff/kind.ts';
import { TASKS } from '../../records/task/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { ComparisonContext } from './context.ts';
import type { ComparisonSources, StoredComparison, VersionOf } from './contract.ts';
import type { OptionFigures } from './option-figures.ts';

/** What of the site the figures follow from: not its name. */
const siteText = ({ document }: SiteRecord): string => {
  const { timeZone, currency, elevation, price, labourRate, tariff } = document;
  return JSON.stringify([timeZone, currency, elevation, price, labourRate, tariff]);
};

function once(versions: readonly VersionOf[]): readonly VersionOf[] {
  return [...new Map(versions.map((one) => [one.id, one])).values()];
}

const stored = ({ id, version }: { id: string | null; version: number | null }): readonly VersionOf[] =>
  id === null ? [] : [{ id, version }];

/** Attention counts them: hours and money for parts a year, by loop and by pump. */
async function checksText(
  store: SiteStore,
  { loops, pumps }: Pick<ComparisonSources, 'loops' | 'pumps'>,
): Promise<string> {
  const choices = [...loops.map(({ id }) => ({ loop: id })), ...pumps.map(({ id }) => ({ pump: id }))];
  const totals: ((typeof choices)[number] & { hours: number; parts: number })[] = [];
  for (const choice of choices) {
    const { hours, parts } = await store.of(TASKS).totals({ ...choice, today: 0 });
    totals.push({ ...choice, hours, parts });
  }
  return JSON.stringify(totals);
}

export async function comparedSources(
  { site, energyPrice, store }: ComparisonContext,
  options: readonly OptionFigures[],
): Promise<ComparisonSources> {
  const assemblies = options.flatMap((option) => option.assemblies);
  const scheduled = assemblies.flatMap(({ found, schedule }) => {
    const id = found?.loop.id ?? null;
    return id === null ? [] : [{ id, version: schedule?.version ?? null }];
  });
  const ofSchedules = assemblies.flatMap(({ running: { tariff } }) =>
    tariff === null ? [] : [{ id: tariff.id, version: tariff.version }],
  );
  const loops = once(assemblies.flatMap(({ found }) => (found?.parts ?? []).flatMap(stored)));
  const pumps = once(assemblies.flatMap(({ candidate }) => (candidate === null ? [] : stored(candidate))));
  return {
    site: siteText(site),
    checks: await checksText(store, { loops, pumps }),
    loops,
    pumps,
    tariffs: once([...(energyPrice.tariff === null ? [] : stored(energyPrice.tariff)), ...ofSchedules]),
    schedules: once(scheduled),
  };
}

export const comparisonBasis = ({ loops, pumps, tariffs, schedules }: ComparisonSources) => ({
  modelVersion: MODEL_VERSION,
  loops: [...loops],
  pumps: [...pumps],
  tariffs: [...tariffs],
  schedules: [...schedules],
});

/** Whether anything that the figures rest on has changed, gone, or come since. */
export async function isStale(store: SiteStore, { sources, figures }: StoredComparison): Promise<boolean> {
  if (figures.basis.modelVersion !== MODEL_VERSION) return true;
  if (siteText(await findSite(store)) !== sources.site) return true;
  const moved = async (
    versions: readonly VersionOf[],
    find: (id: string) => Promise<{ readonly version: number } | undefined>,
  ): Promise<boolean> => {
    for (const { id, version } of versions) {
      if (((await find(id))?.version ?? null) !== version) return true;
    }
    return false;
  };
  return (
    (await moved(sources.loops, store.of(LOOPS).get)) ||
    (await moved(sources.pumps, store.of(PUMPS).get)) ||
    (await moved(sources.tariffs, store.of(TARIFFS).get)) ||
    (await moved(sources.schedules, store.of(SCHEDULES).get)) ||
    (await checksText(store, sources)) !== sources.checks
  );
}
