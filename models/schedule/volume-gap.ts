/** Decides whether a year's runs of a phase move their volume, and finds what whole hours cost above the least. */
import type { Interval } from '../calendar/civil-year.ts';
import type { PhasePlan } from './phase-plan.ts';
import { type PhaseCalendar, phaseRuns } from './phase-starts.ts';
import { type Memory, volumesOf } from './run-blocks.ts';
import { type Prices, volumeRun } from './volume-run.ts';

/**
 * Whether a year's runs of the phase at a place [-] move their volume, and their cost above the bound as a share of
 * its size [-]; null where a run does not move its volume.
 */
export function volumeGap(
  plan: PhasePlan,
  place: number,
  {
    calendar,
    prices,
    interval,
    memory,
  }: {
    readonly calendar: PhaseCalendar;
    readonly prices: Prices;
    readonly interval: Interval;
    readonly memory: Memory;
  },
): { readonly feasible: boolean; readonly gap: number | null } {
  let above = 0;
  let bound = 0;
  for (const run of phaseRuns(calendar, interval)) {
    if (run.phase !== place) continue;
    const planned = volumeRun(plan, run, prices, volumesOf(memory, place));
    if (planned.gap === null || planned.bound === null) return { feasible: false, gap: null };
    above += planned.gap;
    bound += planned.bound;
  }
  return { feasible: true, gap: bound === 0 ? 0 : above / Math.abs(bound) };
}
