/** Counts, by the calendar, how far apart two rounds of a routine check are. */

import { civilDate, dayNumber } from '../calendar/civil-day.ts';
import { DAYS_PER_WEEK, DAYS_PER_YEAR, MONTHS_PER_YEAR } from '../calendar/time-factors.ts';

/**
 * An interval of the calendar: whole numbers of 0 or more, together above 0; what is left out is 0. Years and months,
 * or weeks and days.
 */
export interface Interval {
  /** [years] */
  readonly years?: number | undefined;
  /** [months] */
  readonly months?: number | undefined;
  /** [weeks] */
  readonly weeks?: number | undefined;
  /** [days] */
  readonly days?: number | undefined;
}

/** The years and months of an interval [months]. */
export const monthsOf = ({ years = 0, months = 0 }: Interval): number => years * MONTHS_PER_YEAR + months;

/** The weeks and days of an interval [days]. */
export const daysOf = ({ weeks = 0, days = 0 }: Interval): number => weeks * DAYS_PER_WEEK + days;

/** How often an interval comes round in a year of 365 days and twelve equal months [1/year], above 0. */
export const timesAYear = (every: Interval): number =>
  DAYS_PER_YEAR / ((monthsOf(every) * DAYS_PER_YEAR) / MONTHS_PER_YEAR + daysOf(every));

const daysInMonth = (year: number, month: number): number =>
  dayNumber({ year, month: month + 1, day: 1 }) - dayNumber({ year, month, day: 1 });

/**
 * The day [days since 1970-01-01] that lies a number of intervals after another.
 *
 * A month that is too short ends the count at its last day; the days after that are counted from the first again: the
 * 31st of January, the 28th of February, the 31st of March.
 * @param start a day number [days].
 * @param times [-] of 0 or more, whole.
 */
export function dayAfter(start: number, every: Interval, times = 1): number {
  const { year, month, day } = civilDate(start);
  const months = month - 1 + times * monthsOf(every);
  const yearThen = year + Math.floor(months / MONTHS_PER_YEAR);
  const monthThen = (months % MONTHS_PER_YEAR) + 1;
  const dayThen = Math.min(day, daysInMonth(yearThen, monthThen));
  return dayNumber({ year: yearThen, month: monthThen, day: dayThen }) + times * daysOf(every);
}
