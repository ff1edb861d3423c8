/** The tariff that costs were taken from, as answers tell it. */
import { type Caution, caution } from '../../models/cautions/catalogue.ts';
import type { TariffPrice } from './tariff-price.ts';

const HOURS_PER_DAY = 24;

export const tariffAnswer = (tariff: TariffPrice | null) =>
  tariff === null ? null : { id: tariff.id, name: tariff.name, year: tariff.year };

/** Round the clock the time-mean price is exact; with fewer hours it stands in for hours that nobody stated. */
export const tariffCautions = (tariff: TariffPrice | null, hoursPerDay: number): readonly Caution[] =>
  tariff === null || hoursPerDay === HOURS_PER_DAY ? [] : [caution('time-mean-price', [tariff.name])];
