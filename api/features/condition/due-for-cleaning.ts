/** Brings the cleaning of a screen forward where readings ask for it. */
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import { siteDay } from '../../clock/site-time.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import { TASKS } from '../../records/task/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { Upkeep } from './maintenance-history.ts';

/** A clog that a screen can have; branches have no screen. */
const ASKS: readonly string[] = ['clogged-intake', 'clogged-discharge'];

export interface CleaningDue {
  readonly id: string;
  readonly name: string;
  /** A day number by the calendar of the site. */
  readonly nextDue: number;
}

/** Whether what was found asks for a cleaning: a clog is the verdict, or among the causes that cannot be told apart. */
export const asksForCleaning = ({ verdict, causes }: ConditionReport): boolean =>
  ASKS.includes(verdict) || (verdict === 'changed' && causes.some(({ cause }) => ASKS.includes(cause)));

/** The task that cleans the screen, due today at the latest; null where nothing asks for it, or there is no such task. */
export async function dueForCleaning(
  store: SiteStore,
  {
    report,
    site,
    upkeep,
    now,
  }: {
    readonly report: ConditionReport;
    readonly site: SiteRecord;
    readonly upkeep: Upkeep;
    readonly now: number;
  },
): Promise<CleaningDue | null> {
  const { cleaningTask } = upkeep;
  if (cleaningTask === null || !asksForCleaning(report)) return null;
  const today = siteDay(site.document.timeZone, now);
  const { id, name, progress } = cleaningTask;
  if (progress.nextDue > today) await store.of(TASKS).bringForward({ id, day: today, now });
  return { id, name, nextDue: Math.min(progress.nextDue, today) };
}
