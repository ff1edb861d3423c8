/** Recommends a pump for a stored loop by defaults alone, for pictures and pages. */
import { type Result, success } from '../../../curves/result.ts';
import { HOURS_DEFAULT } from '../../fields/running-fields.ts';
import type { SiteDependencies } from '../../http/api.ts';
import type { Problem } from '../../http/problem.ts';
import { allCandidates, findCandidates } from '../../question/candidates.ts';
import { tariffPrice } from '../../question/tariff-price.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { Recommended } from './answer.ts';
import { type RecommendationDeps, recommend } from './recommendation.ts';
import { RANKING_DEFAULT } from './request-schema.ts';

interface Asked {
  readonly loop: LoopRecord;
  /** Undefined: all stored pumps. */
  readonly pumps: readonly string[] | undefined;
  readonly count: number;
  readonly system: UnitSystem;
}

export async function storedRecommendation(
  deps: Pick<SiteDependencies, 'store' | 'clock'> & RecommendationDeps,
  { loop, pumps, count, system }: Asked,
): Promise<Result<Recommended, Problem>> {
  const { store } = deps;
  const place = { parameter: 'pump' };
  const candidates =
    pumps === undefined
      ? await allCandidates(store, count)
      : await findCandidates(
          store,
          pumps.map((pump) => ({ pump, count, path: [], place })),
        );
  if (!candidates.ok) return candidates;
  const site = await findSite(store);
  const tariff = await tariffPrice(deps, site, {}, place);
  if (!tariff.ok) return tariff;
  return recommend(deps, {
    site,
    loop,
    tariff: tariff.value,
    candidates: candidates.value,
    options: {
      hoursPerDay: HOURS_DEFAULT,
      balancing: 'as-built',
      rankingLimit: RANKING_DEFAULT,
      detail: 'plain',
    },
    places: { loop: null, balancing: place, currency: place },
    system,
  });
}

/** A loop without any requirement has no recommendation: that is no fault of a caller who only looks at it. */
export async function recommendationOrNull(
  ...question: Parameters<typeof storedRecommendation>
): Promise<Result<Recommended | null, Problem>> {
  const recommended = await storedRecommendation(...question);
  return !recommended.ok && recommended.failure.code === 'no-requirement' ? success(null) : recommended;
}
