/** Writes intervals as recurrences of calendars (RFC 5545, 3.8.5). */

import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import { DAYS_PER_WEEK, MONTHS_PER_YEAR } from '../../../models/calendar/time-factors.ts';
import { dayAfter, daysOf, type Interval, monthsOf } from '../../../models/maintenance/interval.ts';

/** Every month has as many. */
const DAYS_ALWAYS = 28;
const LONGEST = 31;
const FEBRUARY = 2;
const YEARS_AHEAD = 10;

const apart = (count: number): string => (count === 1 ? '' : `;INTERVAL=${count}`);

const byDays = (days: number): string =>
  days % DAYS_PER_WEEK === 0 ? `FREQ=WEEKLY${apart(days / DAYS_PER_WEEK)}` : `FREQ=DAILY${apart(days)}`;

/** The days of years to come on which a month that is too short ends the count: a rule skips that month. */
function endsOfMonth(every: Interval, start: number): readonly number[] {
  const rounds = Math.floor((YEARS_AHEAD * MONTHS_PER_YEAR) / monthsOf(every));
  const { day } = civilDate(start);
  const days = Array.from({ length: rounds }, (_, place) => dayAfter(start, every, place + 1));
  return days.filter((then) => civilDate(then).day < day);
}

/** The last day of the month is written as such, which programs read better than a choice of several. */
function byMonths(every: Interval, start: number): readonly string[] {
  const months = monthsOf(every);
  const { month, day } = civilDate(start);
  if (months % MONTHS_PER_YEAR === 0) {
    const leap = month === FEBRUARY && day > DAYS_ALWAYS ? ';BYMONTH=2;BYMONTHDAY=-1' : '';
    return [`RRULE:FREQ=YEARLY${apart(months / MONTHS_PER_YEAR)}${leap}`];
  }
  if (day === LONGEST) return [`RRULE:FREQ=MONTHLY${apart(months)};BYMONTHDAY=-1`];
  const rule = `RRULE:FREQ=MONTHLY${apart(months)}`;
  const ends = day > DAYS_ALWAYS ? endsOfMonth(every, start) : [];
  if (ends.length === 0) return [rule];
  const dates = ends.map((then) => textOfDate(civilDate(then)).replaceAll('-', ''));
  return [rule, `RDATE;VALUE=DATE:${dates.join(',')}`];
}

/**
 * The lines by which a day [number from 1970-01-01] comes again and again: a rule without end, and the last days of
 * February over ten years where it counts by the 29th or the 30th, which a rule alone would skip.
 */
export const recurrenceLines = (every: Interval, start: number): readonly string[] =>
  monthsOf(every) > 0 ? byMonths(every, start) : [`RRULE:${byDays(daysOf(every))}`];
