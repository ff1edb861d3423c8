/** Spreads a year over the rates of a tariff. */
import { civilYear, type Interval } from '../calendar/civil-year.ts';
import { MS_PER_HOUR, type ZoneOffsets } from '../calendar/zone-offsets.ts';
import { eachRateRun } from './rate-runs.ts';
import type { Rates } from './rates.ts';

/** Hours [h] at each rate between two instants [ms]. */
export function hoursByRate(
  { rates, zone }: { readonly rates: Rates; readonly zone: ZoneOffsets },
  { from, until }: Interval,
): Float64Array {
  const hours = new Float64Array(rates.prices.length);
  eachRateRun({ rates, zone, from, until }, (start, end, rate) => {
    hours[rate] = (hours[rate] ?? 0) + (end - start) / MS_PER_HOUR;
  });
  return hours;
}

/** The time-mean price [money/kWh] of a load that is the same at all hours of a year of the calendar. */
export function yearMeanPrice(
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
