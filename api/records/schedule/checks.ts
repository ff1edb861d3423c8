/** Checks what must hold across a phase, and across the phases of a schedule. */
import type { z } from '@hono/zod-openapi';
import { minuteOfText } from '../../../models/calendar/civil-text.ts';
import { DAY_KINDS, namesKind, WEEKDAYS } from '../../../models/calendar/day-kind.ts';
import { minutesToNext } from '../../../models/schedule/phase-length.ts';
import type { Phase } from '../../../models/schedule/schedule.ts';

const DEMANDS = ['factor', 'requiredFlows', 'volume'] as const;

export function checkPhase(phase: Phase, issues: z.RefinementCtx): void {
  const refuse = (path: (string | number)[], message: string) =>
    issues.addIssue({ code: 'custom', path, message });
  const demands = DEMANDS.filter((name) => phase[name] !== undefined);
  const [first, second] = demands;
  if (first === undefined) refuse([], 'needs one of factor, requiredFlows and volume');
  else if (second !== undefined) refuse([second], `must not stand beside ${first}`);
  if (phase.volume !== undefined && phase.pulse !== undefined)
    refuse(['pulse'], 'must not stand beside volume');
  if (phase.volume !== undefined && phase.rampMinutes !== undefined) {
    refuse(['rampMinutes'], 'must not stand beside volume');
  }
  for (const [name, opening] of Object.entries(phase.openings ?? {})) {
    if (opening !== 0 && opening !== 100) refuse(['openings', name], 'must be 0 (closed) or 100 (as built)');
    if (opening === 0 && (phase.requiredFlows?.[name] ?? 0) > 0) {
      refuse(['requiredFlows', name], 'must be 0 for an outlet that the phase shuts');
    }
  }
}

export function checkPhases(phases: readonly Phase[], issues: z.RefinementCtx): void {
  const refuse = (path: (string | number)[], message: string) =>
    issues.addIssue({ code: 'custom', path, message });
  // A start that is no time of day is named at its place.
  const starts = phases.flatMap(({ from }) => (minuteOfText(from) === null ? [] : [from]));
  for (const [place, phase] of phases.entries()) {
    const earlier = phases
      .slice(0, place)
      .find((other) => other.from === phase.from && shareDay(other, phase));
    if (earlier !== undefined)
      refuse([place, 'from'], `is ${phase.from}, at which "${earlier.name}" begins too`);
    if (!starts.includes(phase.from)) continue;
    const room = minutesToNext(phase.from, starts);
    if (phase.rampMinutes !== undefined && phase.rampMinutes > room) {
      refuse([place, 'rampMinutes'], `must be at most ${room}, the minutes to the next start`);
    }
  }
  const begins = phases.some(({ days }) => WEEKDAYS.some((_day, kind) => namesKind(days, kind)));
  if (phases.length > 0 && !begins) refuse([0, 'days'], 'must name a weekday in one of the phases');
}

const shareDay = (a: Phase, b: Phase): boolean =>
  DAY_KINDS.some((_day, kind) => namesKind(a.days, kind) && namesKind(b.days, kind));
