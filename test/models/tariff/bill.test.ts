/**
 * Bills of 1 kW round the clock in 2026, by hand.
 *
 * 1 January 2026 is a Thursday and the year has 365 days = 52 weeks and one Thursday: 261 days from Monday to Friday, less the
 * holiday on Friday, 25 December: 260, and 260 x 4 h = 1040 h of peak. Nights of 6 h: March and October 31 x 6 = 186 h, April
 * 30 x 6 = 180 h. Lisbon skips 01:00 to 02:00 on 29 March (185 h) and has it twice on 25 October (187 h). Sydney has 02:00 to
 * 03:00 twice on 5 April (181 h) and skips it on 4 October (185 h). Tokyo does neither. The rest of 8760 h is base.
 */
import { describe, expect, it } from 'vitest';
import { zoneAround } from '../../../api/clock/zone.ts';
import { civilYear } from '../../../models/calendar/civil-year.ts';
import { eachRateRun } from '../../../models/tariff/rate-runs.ts';
import { ratesOf } from '../../../models/tariff/rates.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import { hoursByRate, yearMeanPrice } from '../../../models/tariff/year-hours.ts';
import { expectClose } from '../../expect-close.ts';

const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri'] as const;
const nights = { from: '00:00', to: '06:00' } as const;

const tariff: Tariff = {
  name: 'hand',
  holidays: ['2026-12-25'],
  periods: [
    { name: 'peak', price: 0.32, days: WEEKDAYS, from: '17:00', to: '21:00' },
    { name: 'march', price: 0.1, months: [3], ...nights },
    { name: 'april', price: 0.11, months: [4], ...nights },
    { name: 'october', price: 0.12, months: [10], ...nights },
  ],
  otherwise: { name: 'base', price: 0.15 },
  standingChargePerDay: 0.4,
};

const yearHours = (zoneName: string, one: Tariff, year = 2026): readonly number[] => {
  const zone = zoneAround(zoneName, year);
  return [...hoursByRate({ rates: ratesOf(one), zone }, civilYear(zone, year))];
};

describe('a bill by time of use', () => {
  it.each([
    // 1040 x 0.32 + 185 x 0.10 + 180 x 0.11 + 187 x 0.12 + 7168 x 0.15
    ['Europe/Lisbon', [1040, 185, 180, 187, 7168], 332.8 + 18.5 + 19.8 + 22.44 + 1075.2],
    ['Asia/Tokyo', [1040, 186, 180, 186, 7168], 332.8 + 18.6 + 19.8 + 22.32 + 1075.2],
    ['Australia/Sydney', [1040, 186, 181, 185, 7168], 332.8 + 18.6 + 19.91 + 22.2 + 1075.2],
  ])('in %s is that of the hours of its clocks', (zoneName, hours, bill) => {
    expect(yearHours(zoneName, tariff)).toEqual(hours);
    const mean = yearMeanPrice({ rates: ratesOf(tariff), zone: zoneAround(zoneName, 2026) }, 2026);
    expectClose(mean * 8760, bill, { relative: 1e-12 });
  });

  it('of a leap year has 8784 hours', () => {
    expect(yearHours('Europe/Lisbon', tariff, 2028).reduce((sum, one) => sum + one, 0)).toBe(8784);
  });

  it('agrees with the reading of the clock at every quarter of an hour', () => {
    for (const zoneName of ['Europe/Lisbon', 'Australia/Lord_Howe', 'America/Sao_Paulo']) {
      const format = new Intl.DateTimeFormat('en-GB', {
        timeZone: zoneName,
        weekday: 'short',
        month: 'numeric',
        day: 'numeric',
        hour: '2-digit',
        hourCycle: 'h23',
      });
      const zone = zoneAround(zoneName, 2026);
      const { from, until } = civilYear(zone, 2026);
      const counted = [0, 0, 0, 0, 0];
      for (let at = from; at < until; at += 900_000) {
        const part = Object.fromEntries(format.formatToParts(at).map(({ type, value }) => [type, value]));
        const [month, day, hour] = [Number(part.month), Number(part.day), Number(part.hour)];
        const isHoliday = month === 12 && day === 25;
        const isWorkday = !isHoliday && part.weekday !== 'Sat' && part.weekday !== 'Sun';
        const night = { 3: 1, 4: 2, 10: 3 }[month];
        const rate = isWorkday && hour >= 17 && hour < 21 ? 0 : hour < 6 && night !== undefined ? night : 4;
        counted[rate] = (counted[rate] ?? 0) + 0.25;
      }
      expect(yearHours(zoneName, tariff)).toEqual(counted);
    }
  });
});

describe('a period', () => {
  const only = (period: Partial<Tariff['periods'][number]>): Tariff => ({
    ...tariff,
    periods: [{ name: 'only', price: -0.02, ...period }],
  });

  it('from an evening to a morning counts each instant by its own date', () => {
    // 52 Mondays in 2026: 2 h before midnight and 6 h after, both on the Monday.
    expect(yearHours('Asia/Tokyo', only({ days: ['mon'], from: '22:00', to: '06:00' }))[0]).toBe(52 * 8);
  });

  it('of holidays holds on the days of the list alone', () => {
    expect(yearHours('Asia/Tokyo', only({ days: ['holiday'] }))[0]).toBe(24);
  });

  it('that ends at 00:00 runs to the end of the day', () => {
    expect(yearHours('Asia/Tokyo', only({ months: [2], from: '21:00', to: '00:00' }))[0]).toBe(28 * 3);
  });

  it('wins over those after it', () => {
    const two = { ...tariff, periods: [...only({}).periods, ...tariff.periods] };
    expect(yearHours('Europe/Lisbon', two)).toEqual([8760, 0, 0, 0, 0, 0]);
  });

  it('of a negative price lowers the bill', () => {
    const zone = zoneAround('Asia/Tokyo', 2026);
    expectClose(yearMeanPrice({ rates: ratesOf(only({})), zone }, 2026), -0.02, { relative: 1e-12 });
  });
});

describe('the runs of an interval', () => {
  it('meet end to end and cover it', () => {
    const zone = zoneAround('Europe/Lisbon', 2026);
    const interval = { from: Date.UTC(2026, 2, 28, 13, 7), until: Date.UTC(2026, 3, 2, 3, 11) };
    let end = interval.from;
    eachRateRun({ rates: ratesOf(tariff), zone, ...interval }, (from, until) => {
      expect(from).toBe(end);
      end = until;
    });
    expect(end).toBe(interval.until);
  });
});
