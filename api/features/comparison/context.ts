/** Gathers what the options of a comparison are computed with. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { MoneyTerms } from '../../../models/money/terms.ts';
import { ratesOf } from '../../../models/tariff/rates.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import { yearMeanPrice } from '../../../models/tariff/year-hours.ts';
import { siteYear } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import type { SiteDependencies } from '../../http/api.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { TariffRecord } from '../../records/tariff/kind.ts';
import { findTariff } from '../../records/tariff/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { RecommendationDeps } from '../recommendation/recommendation.ts';
import type { ComparisonQuestion } from './schema.ts';

export type ComparisonDeps = Pick<SiteDependencies, 'store' | 'clock' | 'newId'> & RecommendationDeps;

/** A tariff by itself, whether stored or sent along; the id is null of one sent along. */
export interface NamedTariff {
  readonly id: string | null;
  readonly version: number | null;
  readonly document: Tariff;
}

export interface EnergyPrice {
  /** Money per kWh of what runs alike at all hours: flat, or the time mean of the tariff. */
  readonly price: number;
  readonly tariff: NamedTariff | null;
  /** Whether the request states it, so that it goes before that of a schedule. */
  readonly isStated: boolean;
}

export interface ComparisonContext extends ComparisonDeps {
  readonly site: SiteRecord;
  readonly system: UnitSystem;
  readonly terms: MoneyTerms;
  readonly labourRate: number;
  readonly energyPrice: EnergyPrice;
  readonly minutesPerFailure: number;
  /** Of the calendar: what schedules are walked through. */
  readonly year: number;
  readonly now: number;
}

export async function comparisonContext(
  deps: ComparisonDeps,
  question: ComparisonQuestion,
  system: UnitSystem,
): Promise<Result<ComparisonContext, Problem>> {
  const { store, clock } = deps;
  const site = await findSite(store);
  const { currency } = site.document;
  if (question.currency !== undefined && question.currency !== currency) {
    const detail = `must be ${currency}, the currency of the site: nothing is converted`;
    return failed(invalidRequest([{ pointer: '/currency', detail }]));
  }
  const now = clock().getTime();
  const year = siteYear(site.document.timeZone, now);
  const energyPrice = await energyPriceOf(deps, question, { site, year });
  if (!energyPrice.ok) return energyPrice;
  const { years, discountRate, inflation, energyInflation = inflation, minutesPerFailure } = question;
  return success({
    ...deps,
    ...{ site, system, minutesPerFailure, year, now },
    terms: { years, discountRate, inflation, energyInflation },
    labourRate: question.labourRate ?? site.document.labourRate ?? 0,
    energyPrice: energyPrice.value,
  });
}

async function energyPriceOf(
  { store }: ComparisonDeps,
  { price, tariff }: ComparisonQuestion,
  { site, year }: { readonly site: SiteRecord; readonly year: number },
): Promise<Result<EnergyPrice, Problem>> {
  const place = { pointer: '/tariff' };
  if (price !== undefined && tariff !== undefined) {
    return failed(invalidRequest([{ ...place, detail: 'must not stand beside price' }]));
  }
  if (price !== undefined) return success({ price, tariff: null, isStated: true });
  const asked = tariff ?? site.document.tariff;
  if (asked === null) {
    const own = site.document.price;
    if (own !== null) return success({ price: own, tariff: null, isStated: false });
    const detail = 'must be stated, or a tariff: the site has neither';
    return failed(invalidRequest([{ pointer: '/price', detail }]));
  }
  const found = typeof asked === 'string' ? await findTariff(store, asked, place) : success(sentAlong(asked));
  if (!found.ok) return found;
  const { id, version, document } = found.value;
  const zone = zoneAround(site.document.timeZone, year);
  const mean = yearMeanPrice({ rates: ratesOf(document), zone }, year);
  return success({ price: mean, tariff: { id, version, document }, isStated: tariff !== undefined });
}

const sentAlong = (document: Tariff): NamedTariff => ({ id: null, version: null, document });

/** As the plan of a schedule takes one; of what was sent along the id and the times mean nothing. */
export const asRecord = ({ id, version, document }: NamedTariff): TariffRecord => ({
  id: id ?? '',
  version: version ?? 0,
  createdAt: 0,
  updatedAt: 0,
  name: document.name,
  document,
});
