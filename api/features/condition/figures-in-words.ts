/** Writes the shares and days of a condition as its sentences show them. */

import { PERCENT } from '../../../curves/percent.ts';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import { siteDay } from '../../clock/site-time.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

/** From here on without a decimal. */
const WHOLE_FROM = 10;

const figure = (share: number): string => {
  const value = Math.abs(PERCENT * share);
  return sayNumber(value >= WHOLE_FROM ? Math.round(value) : Math.round(10 * value) / 10);
};

/** `11 %`, `7.6 %`, whatever the sign. */
export const percent = (share: number): string => `${figure(share)} %`;

/** `8 to 14 %`. */
export const percentRange = (low: number, high: number): string => `${figure(low)} to ${figure(high)} %`;

/** The day that the clocks of a site show, of days since 1970-01-01T00:00Z. */
export const dayWords = (timeZone: string, days: number): string =>
  textOfDate(civilDate(siteDay(timeZone, days * MS_PER_DAY)));

/** `a, b or c`. */
export function listed(parts: readonly string[], conjunction: 'and' | 'or'): string {
  const [last, ...others] = parts.toReversed();
  if (last === undefined) return '';
  return others.length === 0 ? last : `${others.toReversed().join(', ')} ${conjunction} ${last}`;
}

export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
