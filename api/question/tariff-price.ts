/** Computes the price of a tariff for a pump that runs alike at all hours. */
import { failed, type Result, success } from '../../curves/result.ts';
import { ratesOf } from '../../models/tariff/rates.ts';
import type { Tariff } from '../../models/tariff/tariff.ts';
import { yearMeanPrice } from '../../models/tariff/year-hours.ts';
import { siteYear } from '../clock/site-time.ts';
import { zoneAround } from '../clock/zone.ts';
import type { Place } from '../http/problem.ts';
import { invalidRequest, type Problem } from '../http/problem.ts';
import type { SiteRecord } from '../records/site/kind.ts';
import { findTariff } from '../records/tariff/kind.ts';
import type { SiteStore } from '../store/store.ts';

export interface TariffPrice {
  /** Null where the tariff came with the request. */
  readonly id: string | null;
  readonly key?: string | undefined;
  readonly version: number | null;
  readonly name: string;
  readonly year: number;
  /** Time mean over the year of the calendar, money per kWh. */
  readonly price: number;
}

interface Asked {
  readonly price?: number | undefined;
  readonly tariff?: string | Tariff | undefined;
}

/** Null where a price is stated, or neither request nor site names a tariff; then prices are flat. */
export async function tariffPrice(
  { store, clock }: { readonly store: SiteStore; readonly clock: () => Date },
  site: SiteRecord,
  { price, tariff: asked }: Asked,
  place: Place,
): Promise<Result<TariffPrice | null, Problem>> {
  if (price !== undefined && asked !== undefined) {
    return failed(invalidRequest([{ ...place, detail: 'must not stand beside price' }]));
  }
  const tariff = asked ?? (price === undefined ? site.document.tariff : null);
  if (tariff === null) return success(null);
  const stored = typeof tariff === 'string' ? await findTariff(store, tariff, place) : null;
  if (stored !== null && !stored.ok) return stored;
  const document = stored === null ? tariff : stored.value.document;
  if (typeof document === 'string') throw new Error('invariant: a tariff by its id was found');
  const { timeZone } = site.document;
  const year = siteYear(timeZone, clock().getTime());
  return success({
    id: stored?.value.id ?? null,
    key: stored?.value.key,
    version: stored?.value.version ?? null,
    name: document.name,
    year,
    price: yearMeanPrice({ rates: ratesOf(document), zone: zoneAround(timeZone, year) }, year),
  });
}
