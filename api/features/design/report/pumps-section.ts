/** Compares the designs of all pumps, in the report of a design. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { table } from '../../../drawing/table.ts';
import { pumpName } from '../../../drawing/user-name.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { DesignAnswer } from '../answer-schema.ts';

const RANKED_MOST = 8;
const REJECTED_MOST = 8;

const COLUMNS = [
  { name: 'Pump' },
  { name: 'Setting', isFigure: true },
  { name: 'Required head', isFigure: true },
  { name: 'Power', isFigure: true },
  { name: 'Pump cost', isFigure: true },
  { name: 'Energy', isFigure: true },
  { name: 'Pipes', isFigure: true },
  { name: 'Trims', isFigure: true },
  { name: 'In all', isFigure: true },
] as const;

export function pumpsSection(answer: DesignAnswer, system: UnitSystem): Markup {
  const { best, ranking, rejected, counts, assumptions } = answer;
  const sum = (amount: number) => money(amount, assumptions.currency);
  const rows = [...(best === null ? [] : [best]), ...ranking]
    .slice(0, RANKED_MOST)
    .map((row) => [
      pumpName(row),
      `${sayNumber(row.setting)} %`,
      say(row.requiredHead, 'head', system),
      say(row.power, 'power', system),
      sum(row.pumpCost),
      sum(row.energyCost),
      sum(row.pipeCost),
      sum(row.trimCost),
      sum(row.presentValue),
    ]);
  const ranked = rows.length === 0 ? null : table('Best design of each pump', COLUMNS, rows);
  const reasons = rejected.slice(0, REJECTED_MOST).map((one) => [pumpName(one), one.detail]);
  const left =
    reasons.length === 0
      ? null
      : table('Pumps without a design', [{ name: 'Pump' }, { name: 'Reason' }], reasons);
  const more = counts.candidates - rows.length - reasons.length;
  const rest = more <= 0 ? null : markup`<p>${more} more were judged.</p>`;
  return markup`<section><h2>Pumps</h2>${ranked}${left}${rest}</section>`;
}
