/** Puts what follows if a change goes on into sentences. */
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import { dayWords, listed } from './figures-in-words.ts';

/** What holds only if the change goes on: `outlet "far end" falls below required between 2026-07-02 and 2026-08-30`. */
function shortfallClause({ shortfall }: ConditionReport, timeZone: string): readonly string[] {
  if (shortfall === null) return [];
  const { outlet, at, earliest, latest } = shortfall;
  const day = (days: number) => dayWords(timeZone, days);
  if (latest === null) return [`outlet "${outlet}" may fall below required from ${day(earliest)} on`];
  const between = `between ${day(earliest)} and ${day(latest)}`;
  const when = at === null ? between : `about ${day(at)} (${between})`;
  return [`outlet "${outlet}" falls below required ${when}`];
}

const DECIMALS = 2;

const costClause = ({ waiting }: ConditionReport, currency: string): readonly string[] =>
  waiting === null ? [] : [`the next year costs ${currency} ${waiting.nextYearCost.toFixed(DECIMALS)} more`];

/** ` If this goes on, outlet "far end" falls below required between 2026-07-02 and 2026-08-30. Clean every 49 days.` */
export function outlookWords(
  report: ConditionReport,
  { timeZone, currency }: { readonly timeZone: string; readonly currency: string },
): string {
  const { shortfall, course, waiting } = report;
  const isPast =
    shortfall !== null && course !== null && shortfall.latest !== null && shortfall.latest <= course.now;
  const past = isPast ? ` Outlet "${shortfall.outlet}" has fallen below required.` : '';
  const clauses = [...(isPast ? [] : shortfallClause(report, timeZone)), ...costClause(report, currency)];
  const ahead = clauses.length === 0 ? '' : ` If this goes on, ${listed(clauses, 'and')}.`;
  return `${past}${ahead}${intervalWords(waiting)}`;
}

function intervalWords(waiting: ConditionReport['waiting']): string {
  if (waiting === null || waiting.cheapestInterval === null) return '';
  const action = waiting.remedy === 'service' ? 'Have it serviced' : 'Clean';
  return ` ${action} every ${waiting.cheapestInterval.everyDays} days.`;
}
