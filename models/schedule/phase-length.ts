/** Finds how long a phase lasts at least, by the wall clock. */

import { minuteOf } from '../calendar/civil-text.ts';
import { MINUTES_PER_DAY } from '../calendar/time-factors.ts';

/** Minutes [min] from a time of day to the next of the starts, a whole day where there is no other. */
export function minutesToNext(from: string, starts: readonly string[]): number {
  const minute = minuteOf(from);
  const gaps = starts.map((start) => (minuteOf(start) - minute + MINUTES_PER_DAY) % MINUTES_PER_DAY);
  return Math.min(MINUTES_PER_DAY, ...gaps.filter((gap) => gap > 0));
}
