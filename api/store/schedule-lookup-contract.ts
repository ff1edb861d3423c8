/** The schedules of many loops at once. */
import type { ScheduleRecord } from './store.ts';

export interface ScheduleLookup {
  /** By the ids of the loops, those that have one; at most a few hundred ids. */
  getSchedules(keys: {
    readonly siteId: string;
    readonly ids: readonly string[];
  }): Promise<readonly ScheduleRecord[]>;
}
