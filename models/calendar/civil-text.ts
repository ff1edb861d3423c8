/** Reads and writes dates and times of day as ISO 8601 texts. */

import { type CivilDate, civilDate, dayNumber } from './civil-day.ts';
import { MINUTES_PER_HOUR } from './time-factors.ts';

const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const TIME = /^([01]\d|2[0-3]):([0-5]\d)$/;

const padded = (value: number, length: number): string => String(value).padStart(length, '0');

/** The day number [days] of `2026-12-25`; null where the text is no date of the calendar. */
export function dayOfText(text: string): number | null {
  const [, year, month, day] = DATE.exec(text) ?? [];
  if (year === undefined || month === undefined || day === undefined) return null;
  const number = dayNumber({ year: Number(year), month: Number(month), day: Number(day) });
  return textOfDate(civilDate(number)) === text ? number : null;
}

/** The text of a date, such as `2026-12-25`. */
export const textOfDate = ({ year, month, day }: CivilDate): string =>
  `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;

/** Minutes since midnight [min] of `17:30`; null for anything but 00:00 to 23:59. */
export function minuteOfText(text: string): number | null {
  const [, hours, minutes] = TIME.exec(text) ?? [];
  return hours === undefined || minutes === undefined
    ? null
    : Number(hours) * MINUTES_PER_HOUR + Number(minutes);
}

/** Minutes since midnight [min] of a time that was checked when it came in; throws for any other text, which is a bug. */
export function minuteOf(text: string): number {
  const minute = minuteOfText(text);
  if (minute === null) throw new Error(`"${text}" is no time of day`);
  return minute;
}
