import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { recurrenceLines } from '../../../../api/features/maintenance/recurrence-rule.ts';
import { civilDate } from '../../../../models/calendar/civil-day.ts';
import { dayOfText, textOfDate } from '../../../../models/calendar/civil-text.ts';
import { dayAfter, type Interval, timesPerYear } from '../../../../models/maintenance/interval.ts';

const ROUNDS_MAX = 40;
/** For as long as the last days of February are told. */
const YEARS = 9;

const dayOf = (text: string): number => dayOfText(text) ?? Number.NaN;
const textOf = (day: number): string => textOfDate(civilDate(day));

/** The first days of an event, expanded by a library that reads calendars. */
function expanded(lines: readonly string[], start: number, count: number): readonly string[] {
  const dtstart = `DTSTART;VALUE=DATE:${textOf(start).replaceAll('-', '')}`;
  const text = ['BEGIN:VEVENT', dtstart, ...lines, 'END:VEVENT'].join('\r\n');
  const iterator = new ICAL.Event(new ICAL.Component(ICAL.parse(text))).iterator();
  return Array.from({ length: count }, () => String(iterator.next()));
}

describe('the recurrence of an interval', () => {
  it.each([
    ['2026-03-02', { days: 1 }, ['RRULE:FREQ=DAILY']],
    ['2026-03-02', { days: 10 }, ['RRULE:FREQ=DAILY;INTERVAL=10']],
    ['2026-03-02', { weeks: 1 }, ['RRULE:FREQ=WEEKLY']],
    ['2026-03-02', { days: 14 }, ['RRULE:FREQ=WEEKLY;INTERVAL=2']],
    ['2026-03-02', { months: 1 }, ['RRULE:FREQ=MONTHLY']],
    ['2026-03-31', { months: 3 }, ['RRULE:FREQ=MONTHLY;INTERVAL=3;BYMONTHDAY=-1']],
    ['2026-05-30', { months: 6 }, ['RRULE:FREQ=MONTHLY;INTERVAL=6']],
    ['2026-03-31', { years: 1 }, ['RRULE:FREQ=YEARLY']],
    ['2026-03-31', { months: 24 }, ['RRULE:FREQ=YEARLY;INTERVAL=2']],
    ['2028-02-29', { years: 1 }, ['RRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=-1']],
    ['2026-08-30', { months: 30 }, ['RRULE:FREQ=MONTHLY;INTERVAL=30', 'RDATE;VALUE=DATE:20290228,20340228']],
  ])('from %s, %j is %j', (start, every, lines) => {
    expect(recurrenceLines(every, dayOf(start))).toEqual(lines);
  });

  // A second algorithm: the days of the event, expanded by a library of calendars, are the days of the interval.
  it('gives the days that the interval gives, at the ends of months too', () => {
    const interval: fc.Arbitrary<Interval> = fc.oneof(
      fc.record({ months: fc.integer({ min: 1, max: 40 }) }),
      fc.record({ years: fc.integer({ min: 1, max: 5 }) }),
      fc.record({ weeks: fc.integer({ min: 1, max: 60 }) }),
      fc.record({ days: fc.integer({ min: 1, max: 400 }) }),
    );
    const anyDay = fc.integer({ min: dayOf('2024-01-01'), max: dayOf('2029-12-31') });
    const ends = ['2024-02-29', '2026-01-31', '2026-04-30', '2026-08-29', '2027-02-28', '2026-08-30'];
    const monthEnd = fc.constantFrom(...ends.map((text) => dayOf(text)));
    fc.assert(
      fc.property(fc.oneof(anyDay, monthEnd), interval, (start, every) => {
        const rounds = 1 + Math.min(ROUNDS_MAX, Math.floor(YEARS * timesPerYear(every)));
        const expected = Array.from({ length: rounds }, (_, times) => textOf(dayAfter(start, every, times)));
        expect(expanded(recurrenceLines(every, start), start, rounds)).toEqual(expected);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
