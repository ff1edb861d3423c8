/** Distinguishes the days of the week, and holidays, which count as none of them. */
import { DAYS_PER_WEEK } from './time-factors.ts';

export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export const DAY_KINDS = [...WEEKDAYS, 'holiday'] as const;

export type DayKind = (typeof DAY_KINDS)[number];

/** 1970-01-01, day 0, was a Thursday. */
const WEEKDAY_OF_EPOCH = 3;

/** Place in `DAY_KINDS` [-] of a day number [days]; a day of the holidays is a holiday whatever its weekday. */
export function dayKindIndex(number: number, holidays: ReadonlySet<number>): number {
  if (holidays.has(number)) return DAYS_PER_WEEK;
  const index = (number + WEEKDAY_OF_EPOCH) % DAYS_PER_WEEK;
  return index < 0 ? index + DAYS_PER_WEEK : index;
}

/** Whether a list of kinds names the kind at a place of `DAY_KINDS` [-]; no list names all. */
export function namesKind(days: readonly DayKind[] | undefined, index: number): boolean {
  return days === undefined || days.some((day) => day === DAY_KINDS[index]);
}
