/** Computes the steps and prices of a loop's day, with its energy and cost. */

import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import { HOURS_PER_DAY } from '../../../models/calendar/time-factors.ts';
import {
  dayAt,
  instantOf,
  MS_PER_DAY,
  MS_PER_HOUR,
  startOfDay,
  type ZoneOffsets,
} from '../../../models/calendar/zone-offsets.ts';
import { WATTS_PER_KILOWATT } from '../../../models/physics/unit-factors.ts';
import { eachRateRun } from '../../../models/tariff/rate-runs.ts';
import { siteYear, withOffset } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { DayFigures, DayStep, PriceStep } from './day.ts';
import type { SteppedLoop } from './plan-cache.ts';
import type { PlannedLoop } from './planned-loop.ts';
import { runningOf } from './setpoint-answer.ts';

/** The places of hours and minutes in a time of RFC 3339. */
const CLOCK = { from: 11, until: 16 } as const;
const HOURS_APART = 3;

/** The day that a site's clocks show at an instant. */
export const siteDay = (timeZone: string, instant: number): number =>
  dayAt(zoneAround(timeZone, siteYear(timeZone, instant)), instant);

/** The same day as `2026-01-15`. */
export const siteDate = (timeZone: string, instant: number): string =>
  textOfDate(civilDate(siteDay(timeZone, instant)));

/** `day` is the number of a day of the site's calendar. Throws `SolveFailure` where the loop is not solved. */
export function dayFigures(
  { planned, steps }: SteppedLoop,
  { day, system }: { readonly day: number; readonly system: UnitSystem },
): DayFigures {
  const { sources, isPriced } = planned;
  const { timeZone, currency } = sources.site.document;
  const date = civilDate(day);
  const zone = zoneAround(timeZone, date.year);
  const [from, until] = [startOfDay(zone, day), startOfDay(zone, day + 1)];
  const shown = steps(from, until).map((step): DayStep => {
    const { one, power, flow } = runningOf(planned, step);
    const start = Math.max(from, step.from);
    return {
      from: start,
      startsAt: withOffset(zone, start).slice(CLOCK.from, CLOCK.until),
      until: Math.min(until, step.until),
      phase: planned.schedule === null ? null : one.phase.name,
      setting: step.setting,
      feasible: step.feasible,
      power,
      flow,
    };
  });
  const prices = pricesOf(planned, { zone, from, until });
  return {
    loopName: sources.loop.document.name,
    pumpName: sources.pump.document.name,
    count: sources.installed.count,
    system,
    date: textOfDate(date),
    timeZone,
    from,
    until,
    clock: clockOf(zone, day),
    steps: shown,
    prices: isPriced ? prices : null,
    currency,
    energy: shown.reduce((sum, step) => sum + energyOf(step), 0),
    cost: isPriced ? costOf(shown, prices) : null,
  };
}

function clockOf(zone: ZoneOffsets, day: number): DayFigures['clock'] {
  return Array.from({ length: HOURS_PER_DAY / HOURS_APART + 1 }, (_, place) => {
    const hour = place * HOURS_APART;
    const at =
      hour === HOURS_PER_DAY
        ? startOfDay(zone, day + 1)
        : instantOf(zone, day * MS_PER_DAY + hour * MS_PER_HOUR);
    return { at, label: `${String(hour).padStart(2, '0')}:00` };
  });
}

function pricesOf(
  { rates }: PlannedLoop,
  place: { readonly zone: ZoneOffsets; readonly from: number; readonly until: number },
): readonly PriceStep[] {
  const prices: PriceStep[] = [];
  eachRateRun({ rates, ...place }, (from, until, rate) => {
    prices.push({ from, until, price: rates.prices[rate] ?? 0 });
  });
  return prices;
}

/** [kWh] of a step, or of the part of it within an interval. */
const energyOf = (
  step: DayStep,
  { from, until }: { readonly from: number; readonly until: number } = step,
): number =>
  (step.power * Math.max(0, Math.min(step.until, until) - Math.max(step.from, from))) /
  (MS_PER_HOUR * WATTS_PER_KILOWATT);

const costOf = (steps: readonly DayStep[], prices: readonly PriceStep[]): number =>
  steps.reduce(
    (sum, step) => sum + prices.reduce((own, price) => own + price.price * energyOf(step, price), 0),
    0,
  );
