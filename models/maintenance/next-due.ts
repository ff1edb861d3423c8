/** Finds the day on which a routine check is due next. */
import { dayOfText } from '../calendar/civil-text.ts';
import { dayAfter } from './interval.ts';
import type { MaintenanceTask } from './task.ts';

/**
 * The day on which a check is due next: one interval after it was last done, never before `firstDue`; `firstDue`
 * itself where it was never done.
 *
 * @param lastDone the day [days since 1970-01-01] on which it was last done, by the calendar of the site; null:
 *   never.
 * @returns a day number [days].
 */
export function nextDue(
  { every, firstDue }: Pick<MaintenanceTask, 'every' | 'firstDue'>,
  lastDone: number | null,
): number {
  const first = dayOfText(firstDue);
  if (first === null) throw new Error(`invariant: "${firstDue}" was checked when it came in`);
  return lastDone === null ? first : Math.max(first, dayAfter(lastDone, every));
}
