/** What a summary of a site asks of the store besides single records. */
import type { ScheduleRecord } from '../../records/schedule/kind.ts';

export interface SummaryReads {
  /** By the ids of the loops, those that have one; at most a few hundred ids. */
  getSchedules(keys: {
    readonly siteId: string;
    readonly ids: readonly string[];
  }): Promise<readonly ScheduleRecord[]>;
  countLoops(siteId: string): Promise<number>;
}
