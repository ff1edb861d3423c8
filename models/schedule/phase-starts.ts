/** Finds when the phases of a schedule begin. */

import { minuteOf } from '../calendar/civil-text.ts';
import type { Interval } from '../calendar/civil-year.ts';
import { DAY_KINDS, dayKindIndex, namesKind } from '../calendar/day-kind.ts';
import { dayAt, instantOf, MS_PER_DAY, MS_PER_MINUTE, type ZoneOffsets } from '../calendar/zone-offsets.ts';
import type { Phase } from './schedule.ts';

/** A phase running from one instant to the next start. */
export interface PhaseRun extends Interval {
  /** Place in the schedule [-]. */
  readonly phase: number;
}

export interface PhaseCalendar {
  readonly phases: readonly Phase[];
  /** Day numbers [days]. */
  readonly holidays: ReadonlySet<number>;
  readonly zone: ZoneOffsets;
}

/** A phase of one weekday runs for a week; one whose day is often a holiday, for longer. */
const DAYS_LOOKED_BACK = 60;

interface Start {
  readonly phase: number;
  readonly minute: number;
}

/**
 * The runs that touch an interval [ms], whole: the first begins at or before it, the last ends at or after it.
 *
 * Times are wall clock: a skipped one acts at the first instant after, a repeated one at its first occurrence. Where
 * no phase has begun in the 60 days before the interval, the last of the list is taken to run.
 */
export function phaseRuns(calendar: PhaseCalendar, { from, until }: Interval): readonly PhaseRun[] {
  const { zone, phases } = calendar;
  const byKind = startsByKind(phases);
  const startsOn = (day: number): readonly { readonly at: number; readonly phase: number }[] =>
    (byKind[dayKindIndex(day, calendar.holidays)] ?? []).map(({ phase, minute }) => ({
      phase,
      at: instantOf(zone, day * MS_PER_DAY + minute * MS_PER_MINUTE),
    }));
  const firstDay = dayAt(zone, from);
  let running = { at: from, phase: phases.length - 1 };
  for (let back = 0; back <= DAYS_LOOKED_BACK; back++) {
    const before = startsOn(firstDay - back).findLast(({ at }) => at <= from);
    if (before === undefined) continue;
    running = before;
    break;
  }
  const runs: PhaseRun[] = [];
  for (let day = firstDay; running.at < until && day <= firstDay + MOST_DAYS; day++) {
    for (const start of startsOn(day)) {
      if (start.at <= Math.max(running.at, from)) {
        if (start.at >= running.at) running = start;
        continue;
      }
      if (running.at < until) runs.push({ phase: running.phase, from: running.at, until: start.at });
      running = start;
    }
  }
  // Nothing begins any more: the last one runs on.
  if (running.at < until) runs.push({ phase: running.phase, from: running.at, until });
  return runs;
}

/** Longer than any interval that is asked about, with the longest wait for a next start. */
const MOST_DAYS = 1000;

function startsByKind(phases: readonly Phase[]): readonly (readonly Start[])[] {
  return DAY_KINDS.map((_kind, kind) =>
    phases
      .flatMap(({ from, days }, phase) => (namesKind(days, kind) ? [{ phase, minute: minuteOf(from) }] : []))
      .toSorted((a, b) => a.minute - b.minute),
  );
}
