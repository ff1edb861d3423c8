/** Names what a recommendation is asked about: a loop, candidates, options. */
import type { HeatTerms } from '../../../models/duty/heat.ts';
import type { StatedLimits } from '../../../models/loop/limits.ts';
import type { Balancing } from '../../../models/selection/options.ts';
import type { AskedLifeCycle, Objective } from '../../fields/life-cycle-terms.ts';
import type { Place } from '../../http/problem.ts';
import type { Candidate } from '../../question/candidates.ts';
import type { SelectionPlaces } from '../../question/solve-problems.ts';
import type { TariffPrice } from '../../question/tariff-price.ts';
import type { StoredLoop } from '../../records/loop/compiled-loops.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { AskedAssurance } from './assurance-request.ts';
import type { RecommendationWork } from './job.ts';

/** What a caller may state besides loop and pumps, in a body or a query. */
export interface RecommendationOptions {
  /** Undefined: the site's. */
  readonly price?: number | undefined;
  readonly currency?: string | undefined;
  readonly hoursPerDay: number;
  readonly balancing: Balancing;
  /** Where members are left out, those of the loop hold. */
  readonly limits?: StatedLimits | undefined;
  readonly rankingLimit: number;
  readonly assurance?: AskedAssurance | undefined;
  readonly detail: RecommendationWork['detail'];
  /** By energy cost where it is left out. */
  readonly objective?: Objective | undefined;
  readonly lifeCycle?: AskedLifeCycle | undefined;
  /** Undefined: not asked. */
  readonly heat?: HeatTerms | undefined;
}

export interface RecommendationQuestion {
  readonly site: SiteRecord;
  readonly loop: StoredLoop;
  readonly candidates: readonly Candidate[];
  readonly options: RecommendationOptions;
  /** Null where prices are flat. */
  readonly tariff: TariffPrice | null;
  readonly places: SelectionPlaces & { readonly currency: Place };
  readonly system: UnitSystem;
}
