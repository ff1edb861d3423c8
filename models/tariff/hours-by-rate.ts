/** Counts the hours between two instants at each rate of a tariff. */
import type { Interval } from '../calendar/civil-year.ts';
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
