/** Reads the clocks of a time zone between two instants. */
import { dayNumber } from '../../models/calendar/civil-day.ts';
import { MS_PER_DAY, type ZoneOffsets } from '../../models/calendar/zone-offsets.ts';
import { offsetsWithin } from './zone.ts';

const startOf = (year: number): number => dayNumber({ year, month: 1, day: 1 }) * MS_PER_DAY;
const yearOf = (instant: number): number => new Date(instant).getUTCFullYear();

/** Offsets from the start of the year before `from` to the end of the year after `until`. */
export const zoneBetween = (
  zoneName: string,
  { from, until }: { readonly from: number; readonly until: number },
): ZoneOffsets =>
  offsetsWithin(zoneName, { from: startOf(yearOf(from) - 1), until: startOf(yearOf(until) + 2) });
