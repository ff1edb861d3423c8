/** Finds the instants between which a year of the calendar runs in a time zone. */
import { dayNumber } from './civil-day.ts';
import { startOfDay, type ZoneOffsets } from './zone-offsets.ts';

/** A stretch of time, its end excluded. */
export interface Interval {
  /** [ms since 1970-01-01T00:00Z] */
  readonly from: number;
  /** [ms since 1970-01-01T00:00Z] */
  readonly until: number;
}

const newYear = (year: number): number => dayNumber({ year, month: 1, day: 1 });

/** The instants [ms] between which a year of the calendar runs in a zone. */
export const civilYear = (zone: ZoneOffsets, year: number): Interval => ({
  from: startOfDay(zone, newYear(year)),
  until: startOfDay(zone, newYear(year + 1)),
});
