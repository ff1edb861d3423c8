import { describe, expect, it } from 'vitest';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { dayOfText, textOfDate } from '../../../models/calendar/civil-text.ts';
import type { Interval } from '../../../models/maintenance/interval.ts';
import { nextDue } from '../../../models/maintenance/next-due.ts';

const due = (firstDue: string, every: Interval, lastDone: string | null): string =>
  textOfDate(civilDate(nextDue({ firstDue, every }, lastDone === null ? null : dayOfText(lastDone))));

describe('the day on which a check is due next', () => {
  it.each([
    ['the first one where it was never done', null, '2026-03-01'],
    ['an interval after it was last done', '2026-03-05', '2026-04-05'],
    ['an interval after it was done ahead of time', '2026-02-20', '2026-03-20'],
    ['an interval after it was done late', '2026-06-30', '2026-07-30'],
    ['never before the first one', '2025-11-02', '2026-03-01'],
    ['at the end of a month that is shorter', '2027-01-31', '2027-02-28'],
  ])('is %s', (_case, lastDone, expected) => {
    expect(due('2026-03-01', { months: 1 }, lastDone)).toBe(expected);
  });

  it('refuses a date that should have been refused before', () => {
    expect(() => due('2026-02-30', { days: 1 }, null)).toThrow('invariant');
  });
});
