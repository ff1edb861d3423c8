/** Walks the rates of a tariff over a stretch of time, run by run. */

import { civilDate } from '../calendar/civil-day.ts';
import { dayKindIndex } from '../calendar/day-kind.ts';
import { MINUTES_PER_DAY } from '../calendar/time-factors.ts';
import { MS_PER_DAY, MS_PER_MINUTE, offsetAt, type ZoneOffsets } from '../calendar/zone-offsets.ts';
import type { Rates } from './rates.ts';

/** The shortest month: only beyond it can the next day be in another. */
const DAYS_OF_EVERY_MONTH = 28;

/** Takes a run from one instant [ms] to another at a rate by its place [-]. */
export type VisitRun = (from: number, until: number, rate: number) => void;

/**
 * Visits, in order, the runs of one rate between two instants [ms].
 *
 * A rate is that of the wall clock's reading, so that an hour that clocks show twice has the same rate twice, and one
 * that they jump over has none.
 */
export function eachRateRun(
  {
    rates,
    zone,
    from,
    until,
  }: { readonly rates: Rates; readonly zone: ZoneOffsets; from: number; until: number },
  visit: VisitRun,
): void {
  const { changes } = zone;
  let place = changes.findLastIndex(({ at }) => at <= from);
  for (let start = from; start < until; place++) {
    const end = Math.min(until, changes[place + 1]?.at ?? until);
    const offset = changes[place]?.offset ?? offsetAt(zone, start);
    eachRunAtOffset(rates, { from: start, until: end, offset }, visit);
    start = end;
  }
}

function eachRunAtOffset(
  { patterns, holidays }: Rates,
  { from, until, offset }: { readonly from: number; readonly until: number; readonly offset: number },
  visit: VisitRun,
): void {
  const last = Math.ceil((until + offset) / MS_PER_DAY);
  const first = Math.floor((from + offset) / MS_PER_DAY);
  let { month, day } = civilDate(first);
  for (let number = first; number < last; number++) {
    const pattern = patterns[month - 1]?.[dayKindIndex(number, holidays)];
    if (pattern === undefined) throw new Error(`month ${month} has no pattern`);
    const midnight = number * MS_PER_DAY - offset;
    const { minutes, rates } = pattern;
    for (let i = 0; i < rates.length; i++) {
      const start = Math.max(from, midnight + (minutes[i] ?? 0) * MS_PER_MINUTE);
      const end = Math.min(until, midnight + (minutes[i + 1] ?? MINUTES_PER_DAY) * MS_PER_MINUTE);
      if (start < end) visit(start, end, rates[i] ?? 0);
    }
    day += 1;
    if (day > DAYS_OF_EVERY_MONTH) ({ month, day } = civilDate(number + 1));
  }
}
