/** Gives the mean price of a tariff over a year, by time or by energy. */
import { civilYear } from '../calendar/civil-year.ts';
import type { ZoneOffsets } from '../calendar/zone-offsets.ts';
import { hoursByRate } from './hours-by-rate.ts';
import type { Rates } from './rates.ts';

/** The time-mean price [money/kWh] of a load that is the same at all hours of a year of the calendar. */
export function timeMeanPrice(
  { rates, zone }: { readonly rates: Rates; readonly zone: ZoneOffsets },
  year: number,
): number {
  const hours = hoursByRate({ rates, zone }, civilYear(zone, year));
  let money = 0;
  let all = 0;
  for (const [rate, here] of hours.entries()) {
    money += here * (rates.prices[rate] ?? 0);
    all += here;
  }
  return money / all;
}

/**
 * The mean price by energy [money/kWh] of a load that varies: the year's cost [money] over its energy [kWh], 0 or more;
 * null of a load that takes no energy.
 */
export const energyMeanPrice = ({
  cost,
  energy,
}: {
  readonly cost: number;
  readonly energy: number;
}): number | null => (energy === 0 ? null : cost / energy);
