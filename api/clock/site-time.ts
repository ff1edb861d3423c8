/** Reads instants by the clocks of a site. */

import { civilDate } from '../../models/calendar/civil-day.ts';
import { MINUTES_PER_HOUR } from '../../models/calendar/time-factors.ts';
import { dayAt, MS_PER_MINUTE, offsetAt, type ZoneOffsets } from '../../models/calendar/zone-offsets.ts';
import { zoneAround } from './zone.ts';

/** The year that a site's clocks show. A zone is at most 14 hours away from UTC, so that the years around are enough. */
export function siteYear(zoneName: string, instant: number): number {
  const year = new Date(instant).getUTCFullYear();
  return civilDate(dayAt(zoneAround(zoneName, year), instant)).year;
}

/** The day [number from 1970-01-01] that a site's clocks show. */
export const siteDay = (zoneName: string, instant: number): number =>
  dayAt(zoneAround(zoneName, new Date(instant).getUTCFullYear()), instant);

/** RFC 3339 with the offset of the site: `2026-03-29T01:30:00.000+01:00`. */
export function withOffset(zone: ZoneOffsets, instant: number): string {
  const offset = offsetAt(zone, instant);
  const local = new Date(instant + offset).toISOString().slice(0, -1);
  const minutes = Math.abs(Math.round(offset / MS_PER_MINUTE));
  const two = (value: number) => String(value).padStart(2, '0');
  const sign = offset < 0 ? '-' : '+';
  return `${local}${sign}${two(Math.floor(minutes / MINUTES_PER_HOUR))}:${two(minutes % MINUTES_PER_HOUR)}`;
}
