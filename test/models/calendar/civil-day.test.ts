import { describe, expect, it } from 'vitest';
import { civilDate, dayNumber } from '../../../models/calendar/civil-day.ts';
import { dayOfText, minuteOfText } from '../../../models/calendar/civil-text.ts';
import { DAY_KINDS, dayKindIndex } from '../../../models/calendar/day-kind.ts';

const MS_PER_DAY = 86_400_000;

describe('the number of a day', () => {
  it('agrees with the proleptic Gregorian calendar of ECMAScript over 400 years, and back', () => {
    for (let number = -30_000; number < 116_097; number++) {
      const date = new Date(number * MS_PER_DAY);
      const civil = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
      if (dayNumber(civil) !== number) throw new Error(`${date.toISOString()} is not ${number}`);
      expect(civilDate(number)).toEqual(civil);
    }
  });

  it.each([
    ['1970-01-01', 'thu'],
    ['2000-02-29', 'tue'],
    ['2026-01-01', 'thu'],
    ['2026-12-25', 'fri'],
  ])('%s was a %s', (text, day) => {
    expect(DAY_KINDS[dayKindIndex(dayOfText(text) ?? 0, new Set())]).toBe(day);
  });

  it('is a holiday and no weekday where the list says so', () => {
    const day = dayOfText('2026-12-25') ?? 0;
    expect(DAY_KINDS[dayKindIndex(day, new Set([day]))]).toBe('holiday');
  });
});

describe('texts', () => {
  it.each(['2026-02-29', '2026-13-01', '2026-1-1', '26-01-01', '2026-04-31', ''])('%s is no date', (text) => {
    expect(dayOfText(text)).toBeNull();
  });

  it.each([
    ['00:00', 0],
    ['23:59', 1439],
    ['17:30', 1050],
  ])('%s is minute %i', (text, minute) => {
    expect(minuteOfText(text)).toBe(minute);
  });

  it.each(['24:00', '7:00', '12:60', '12:00:00', ' 12:00', ''])('"%s" is no time of day', (text) => {
    expect(minuteOfText(text)).toBeNull();
  });
});
