/** Finds the instants between which a year of the calendar runs in a time zone. */
import { dayNumber } from './civil-day.ts';
import { startOfDay, type ZoneOffsets } from './zone-offsets.ts';

export interface Interval {
  readonly from: number;
  readonly until: number;
}

const newYear = (year: number): number => dayNumber({ year, month: 1, day: 1 });

export const civilYear = (zone: ZoneOffsets, year: number): Interval => ({
  from: startOfDay(zone, newYear(year)),
  until: startOfDay(zone, newYear(year + 1)),
});
