/** Compiles a tariff into the rate of each minute, by month and kind of day. */

import { dayOfText, minuteOf } from '../calendar/civil-text.ts';
import { DAY_KINDS, namesKind } from '../calendar/day-kind.ts';
import { MINUTES_PER_DAY, MONTHS_PER_YEAR } from '../calendar/time-factors.ts';
import type { Tariff, TariffPeriod } from './tariff.ts';

/** Through one kind of day: from `minutes[i]` on, until the next, the rate `rates[i]` holds. The first minute is 0. */
export interface DayPattern {
  /** Since midnight [min]. */
  readonly minutes: readonly number[];
  /** Places of rates [-]. */
  readonly rates: readonly number[];
}

export interface Rates {
  readonly names: readonly string[];
  /** [money/kWh], one a rate: the periods in their order, then `otherwise`. */
  readonly prices: readonly number[];
  /** Day numbers [days]. */
  readonly holidays: ReadonlySet<number>;
  /** By month - 1, then place of the kind of day in `DAY_KINDS`. */
  readonly patterns: readonly (readonly DayPattern[])[];
}

/** Compiles a tariff whose times and dates were checked. */
export function ratesOf(tariff: Tariff): Rates {
  const { periods, otherwise, holidays } = tariff;
  const all = [...periods, otherwise];
  return {
    names: all.map(({ name }) => name),
    prices: all.map(({ price }) => price),
    holidays: new Set(holidays.flatMap((text) => dayOfText(text) ?? [])),
    patterns: Array.from({ length: MONTHS_PER_YEAR }, (_, month) =>
      DAY_KINDS.map((_kind, kind) => dayPattern(periods, { month: month + 1, kind })),
    ),
  };
}

/** One price [money/kWh] at all times. */
export const flatRate = (price: number): Rates =>
  ratesOf({
    name: 'flat',
    holidays: [],
    periods: [],
    otherwise: { name: 'flat', price },
    standingChargePerDay: 0,
  });

function dayPattern(
  periods: readonly TariffPeriod[],
  { month, kind }: { readonly month: number; readonly kind: number },
): DayPattern {
  const applies = periods.map(
    ({ months, days }) => (months === undefined || months.includes(month)) && namesKind(days, kind),
  );
  const edges = new Set([0]);
  for (const { from, to } of periods) {
    if (from !== undefined) edges.add(minuteOf(from));
    if (to !== undefined) edges.add(minuteOf(to));
  }
  const minutes: number[] = [];
  const rates: number[] = [];
  for (const minute of [...edges].toSorted((a, b) => a - b)) {
    const first = periods.findIndex((period, i) => applies[i] === true && covers(period, minute));
    const rate = first < 0 ? periods.length : first;
    if (rates.at(-1) === rate) continue;
    minutes.push(minute);
    rates.push(rate);
  }
  return { minutes, rates };
}

function covers({ from, to }: TariffPeriod, minute: number): boolean {
  const start = from === undefined ? 0 : minuteOf(from);
  const end = to === undefined ? MINUTES_PER_DAY : minuteOf(to);
  return start < end ? minute >= start && minute < end : minute >= start || minute < end;
}
