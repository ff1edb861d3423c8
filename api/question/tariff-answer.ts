/** Names in an answer the tariff that costs were taken from. */
import type { TariffPrice } from './tariff-price.ts';

export const tariffAnswer = (tariff: TariffPrice | null) =>
  tariff === null ? null : { id: tariff.id, name: tariff.name, year: tariff.year };
