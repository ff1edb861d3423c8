/** Lists the other pumps that were judged, in a loop's report. */

import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { table } from '../../../drawing/table.ts';
import { pumpName } from '../../../drawing/user-name.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { LoopReport } from './report-figures.ts';

const RANKED_MOST = 6;
const REJECTED_MOST = 6;

const COLUMNS = [
  { name: 'Pump' },
  { name: 'Setting', isFigure: true },
  { name: 'Flow', isFigure: true },
  { name: 'Power', isFigure: true },
  { name: 'Cost a year', isFigure: true },
] as const;

/** Null where there was but one, and it serves. */
export function candidatesSection({ recommendation, system }: LoopReport): Markup | null {
  const { ranking, rejected, counts, assumptions } = recommendation;
  if (counts.candidates <= 1 && rejected.length === 0) return null;
  const rows = ranking
    .slice(0, RANKED_MOST)
    .map((duty) => [
      pumpName(duty),
      `${sayNumber(duty.setting)} %`,
      say(duty.flow, 'flow', system),
      say(duty.power, 'power', system),
      money(duty.annualCost, assumptions.currency),
    ]);
  const ranked = rows.length === 0 ? null : table('Pumps that serve, the cheapest first', COLUMNS, rows);
  const reasons = rejected.slice(0, REJECTED_MOST).map((one) => [pumpName(one), one.detail]);
  const left =
    reasons.length === 0
      ? null
      : table('Pumps that serve at no setting', [{ name: 'Pump' }, { name: 'Why' }], reasons);
  const more = counts.candidates - rows.length - reasons.length;
  const rest = more <= 0 ? null : markup`<p>${more} more were judged.</p>`;
  return markup`<section><h2>Pumps judged</h2>${ranked}${left}${rest}</section>`;
}
