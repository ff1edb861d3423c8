/** What must hold across a phase, and across the phases of a schedule. */
import type { z } from '@hono/zod-openapi';
import { minuteOfText } from '../../../models/calendar/civil-text.ts';
import { DAY_KINDS, namesKind, WEEKDAYS } from '../../../models/calendar/day-kind.ts';
import { minutesToNext } from '../../../models/schedule/phase-length.ts';
import type { Phase } from '../../../models/schedule/schedule.ts';

const DEMANDS = ['factor', 'requiredFlows', 'volume'] as const;

export function checkPhase(phase: Phase, issues: z.RefinementCtx): void {
  const tell = (path: (string | number)[], message: string) =>
    issues.addIssue({ code: 'custom', path, message });
  const demands = DEMANDS.filter((name) => phase[name] !== undefined);
  const [first, second] = demands;
  if (first === undefined) tell([], 'needs one of factor, requiredFlows and volume');
  else if (second !== undefined) tell([second], `must not stand beside ${first}`);
  if (phase.volume !== undefined && phase.pulse !== undefined)
    tell(['pulse'], 'must not stand beside volume');
  if (phase.volume !== undefined && phase.rampMinutes !== undefined) {
    tell(['rampMinutes'], 'must not stand beside volume');
  }
  for (const [name, opening] of Object.entries(phase.openings ?? {})) {
    if (opening !== 0 && opening !== 100) tell(['openings', name], 'must be 0 (shut) or 100 (as built)');
    if (opening === 0 && (phase.requiredFlows?.[name] ?? 0) > 0) {
      tell(['requiredFlows', name], 'must be 0 for an outlet that the phase shuts');
    }
  }
}

export function checkPhases(phases: readonly Phase[], issues: z.RefinementCtx): void {
  const tell = (path: (string | number)[], message: string) =>
    issues.addIssue({ code: 'custom', path, message });
  // A start that is no time of day is told where it stands.
  const starts = phases.flatMap(({ from }) => (minuteOfText(from) === null ? [] : [from]));
  for (const [place, phase] of phases.entries()) {
    const earlier = phases
      .slice(0, place)
      .find((other) => other.from === phase.from && shareDay(other, phase));
    if (earlier !== undefined)
      tell([place, 'from'], `is ${phase.from}, at which "${earlier.name}" begins too`);
    if (!starts.includes(phase.from)) continue;
    const room = minutesToNext(phase.from, starts);
    if (phase.rampMinutes !== undefined && phase.rampMinutes > room) {
      tell([place, 'rampMinutes'], `must be at most ${room}, the minutes to the next start`);
    }
  }
  const begins = phases.some(({ days }) => WEEKDAYS.some((_day, kind) => namesKind(days, kind)));
  if (phases.length > 0 && !begins) tell([0, 'days'], 'must name a weekday in one of the phases');
}

const shareDay = (a: Phase, b: Phase): boolean =>
  DAY_KINDS.some((_day, kind) => namesKind(a.days, kind) && namesKind(b.days, kind));
