/** Names in an answer the tariff that costs were taken from. */
import { recordReference } from '../store/record-reference.ts';
import type { TariffPrice } from './tariff-price.ts';

export const tariffAnswer = (tariff: TariffPrice | null) =>
  tariff === null ? null : { ...recordReference(tariff), year: tariff.year };
