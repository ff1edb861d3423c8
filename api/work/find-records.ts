/** Stored records by their ids, or the problem that says there is none. */
import { failed, type Result, success } from '../../curves/result.ts';
import { invalidRequest, type Problem, problem } from '../http/problem.ts';
import { DEFAULT_SITE_ID } from '../store/default-site.ts';
import type { LoopRecord, PumpRecord, SiteRecord, Store, TariffRecord } from '../store/store.ts';
import type { Place } from './selection-problems.ts';

export async function findSite(store: Store): Promise<SiteRecord> {
  const site = await store.getSite(DEFAULT_SITE_ID);
  if (site === undefined) throw new Error('invariant: the site is made when the service starts');
  return site;
}

/** `place` is null where the id stands in the path. */
export async function findLoop(
  store: Store,
  id: string,
  place: Place | null,
): Promise<Result<LoopRecord, Problem>> {
  const loop = await store.getLoop({ siteId: DEFAULT_SITE_ID, id });
  return loop === undefined ? failed(noRecord('loop', place)) : success(loop);
}

export async function findPump(
  store: Store,
  id: string,
  place: Place | null,
): Promise<Result<PumpRecord, Problem>> {
  const pump = await store.getPump({ siteId: DEFAULT_SITE_ID, id });
  return pump === undefined ? failed(noRecord('pump', place)) : success(pump);
}

export async function findTariff(
  store: Store,
  id: string,
  place: Place | null,
): Promise<Result<TariffRecord, Problem>> {
  const tariff = await store.getTariff({ siteId: DEFAULT_SITE_ID, id });
  return tariff === undefined ? failed(noRecord('tariff', place)) : success(tariff);
}

export function noRecord(kind: 'loop' | 'pump' | 'tariff', place: Place | null): Problem {
  if (place === null) return problem('not-found', `There is no ${kind} with this id.`);
  return invalidRequest([{ ...place, detail: `names no ${kind} that is stored` }]);
}
