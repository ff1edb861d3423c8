/** Answers what follows if a change goes on. */
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import type { ConditionAnswer } from './answer-schema.ts';
import { instantText } from './instant-text.ts';
import type { ConditionAsked, JudgedLoop } from './judge-loop.ts';

const optionalInstant = (days: number | null): string | undefined =>
  days === null ? undefined : instantText(days);

export function shortfallAnswer({ shortfall }: ConditionReport): ConditionAnswer['shortfallForecast'] {
  if (shortfall === null) return undefined;
  const { outlet, at, earliest, latest, reason } = shortfall;
  return {
    ...{ outlet, at: optionalInstant(at), earliest: instantText(earliest) },
    ...{ latest: optionalInstant(latest), reason: reason ?? undefined },
  };
}

export function waitingAnswer(
  { report, site, upkeep }: JudgedLoop,
  { cleaningCost }: ConditionAsked,
): ConditionAnswer['waiting'] {
  const { waiting, course } = report;
  if (waiting === null || course === null) return undefined;
  const { remedy, annualExcessCost, nextYearCost, capReached, cheapestInterval } = waiting;
  const costFrom = cleaningCost === undefined ? upkeep.costs[remedy]?.source : 'request';
  return {
    ...{ currency: site.document.currency, annualExcessCost, nextYearCost },
    capReachedAt: capReached === null ? undefined : instantText(course.now + capReached),
    cheapestInterval:
      cheapestInterval === null || costFrom === undefined
        ? undefined
        : { action: remedy, costFrom, ...cheapestInterval },
  };
}
