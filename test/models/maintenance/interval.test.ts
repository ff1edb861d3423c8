import fc from 'fast-check';
import { DateTime, Duration } from 'luxon';
import { describe, expect, it } from 'vitest';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { dayOfText, textOfDate } from '../../../models/calendar/civil-text.ts';
import { dayAfter, type Interval, timesPerYear } from '../../../models/maintenance/interval.ts';
import { expectClose } from '../../expect-close.ts';

const numberOf = (text: string): number => dayOfText(text) ?? Number.NaN;
const later = (text: string, every: Interval, times?: number): string =>
  textOfDate(civilDate(dayAfter(numberOf(text), every, times)));

describe('a day some intervals after another', () => {
  it.each([
    ['2026-01-31', { months: 1 }, 1, '2026-02-28'],
    ['2024-01-31', { months: 1 }, 1, '2024-02-29'],
    ['2026-01-31', { months: 1 }, 2, '2026-03-31'],
    ['2024-02-29', { years: 1 }, 1, '2025-02-28'],
    ['2024-02-29', { years: 1 }, 4, '2028-02-29'],
    ['2026-11-30', { months: 3 }, 1, '2027-02-28'],
    ['2026-12-25', { weeks: 1 }, 1, '2027-01-01'],
    ['2026-03-28', { days: 1 }, 2, '2026-03-30'],
    ['2026-06-15', { years: 1, months: 6 }, 1, '2027-12-15'],
    ['2026-06-15', { years: 10 }, 1, '2036-06-15'],
    ['2026-06-15', { months: 1 }, 0, '2026-06-15'],
  ])('%s and %j, %i times, is %s', (start, every, times, expected) => {
    expect(later(start, every, times)).toBe(expected);
  });

  // A second algorithm: the calendar arithmetic of luxon, which clamps at the ends of months likewise.
  it('is the day that a library of dates finds', () => {
    const interval = fc.oneof(
      fc.record({ years: fc.nat(10), months: fc.integer({ min: 1, max: 24 }) }),
      fc.record({ weeks: fc.nat(60), days: fc.integer({ min: 1, max: 400 }) }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: numberOf('1990-01-01'), max: numberOf('2100-12-31') }),
        interval,
        fc.nat(30),
        (start, every: Interval, times) => {
          const text = textOfDate(civilDate(start));
          const steps = Duration.fromObject(every).mapUnits((value) => value * times);
          const expected = DateTime.fromISO(text, { zone: 'utc' }).plus(steps).toISODate();
          expect(later(text, every, times)).toBe(expected);
        },
      ),
      { seed: 1, numRuns: 500 },
    );
  });

  it('is later for a longer interval and for more of them', () => {
    const months = fc.integer({ min: 1, max: 120 });
    fc.assert(
      fc.property(fc.integer({ min: 7000, max: 60_000 }), months, months, (start, a, b) => {
        const [short, long] = a <= b ? [a, b] : [b, a];
        expect(dayAfter(start, { months: short })).toBeGreaterThan(start);
        expect(dayAfter(start, { months: long })).toBeGreaterThanOrEqual(dayAfter(start, { months: short }));
        expect(dayAfter(start, { months: short }, 2)).toBeGreaterThan(dayAfter(start, { months: short }));
      }),
      { seed: 1 },
    );
  });
});

describe('how often an interval comes round', () => {
  it.each([
    [{ months: 1 }, 12],
    [{ years: 1 }, 1],
    [{ months: 6 }, 2],
    [{ years: 10 }, 0.1],
    [{ days: 1 }, 365],
    [{ weeks: 1 }, 365 / 7],
    [{ years: 1, months: 6 }, 2 / 3],
  ])('%j is %d times a year', (every, times) => {
    expectClose(timesPerYear(every), times, { relative: 1e-12 });
  });
});
