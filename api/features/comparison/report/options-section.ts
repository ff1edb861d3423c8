/** Compares the options column by column, in a comparison's report. */

import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { table } from '../../../drawing/table.ts';
import { userName } from '../../../drawing/user-name.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { ComparisonAnswer, ReportedOption } from './report-figures.ts';

const COLUMNS = [
  { name: 'Option' },
  { name: 'Present value', isFigure: true },
  { name: 'Between', isFigure: true },
  { name: 'Energy a year', isFigure: true },
  { name: 'Attention a year', isFigure: true },
  { name: 'Expected loss a year', isFigure: true },
  { name: 'Pays back', isFigure: true },
] as const;

const YEAR_DIGITS = 3;

function paybackWords({ payback }: ReportedOption, isFirst: boolean): string {
  if (isFirst) return 'reference';
  if (payback === null) return '\u2013';
  return payback.simple === null ? 'not within' : `${sayNumber(payback.simple, YEAR_DIGITS)} years`;
}

export function optionsSection({ options, currency }: ComparisonAnswer, system: UnitSystem): Markup {
  const rows = options.map((option, place) => [
    markup`${userName(option.name)}${option.feasible ? null : ' (does not serve)'}`,
    money(option.presentValue, currency),
    `${sayNumber(option.range.low)} to ${sayNumber(option.range.high)}`,
    say(option.annualEnergy, 'energy', system),
    `${sayNumber(option.attention.hours, YEAR_DIGITS)} h`,
    sayNumber(option.expectedLoss.value),
    paybackWords(option, place === 0),
  ]);
  return markup`<section><h2>Options</h2>${table(`Side by side, money in ${currency}`, COLUMNS, rows)}</section>`;
}
