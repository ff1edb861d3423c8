/** Lists what a comparison's report assumes. */
import { PERCENT } from '../../../../curves/percent.ts';

import { type Markup, type MarkupPart, markup } from '../../../drawing/markup/markup.ts';
import { plainName } from '../../../drawing/markup/name-text.ts';
import { facts } from '../../../drawing/table.ts';
import { sayNumber } from '../../../wording/numbers-in-words.ts';
import type { ComparisonAnswer } from './report-figures.ts';

const percent = (share: number): string => `${sayNumber(PERCENT * share)} % a year`;

export function termsSection({ assumptions, currency }: ComparisonAnswer): Markup {
  const { tariff, price, notes } = assumptions;
  const mean = tariff === null ? '' : `, the time mean of ${plainName(tariff)}`;
  const rows: readonly (readonly [string, MarkupPart])[] = [
    ['Years looked at', String(assumptions.years)],
    ['Discount rate', percent(assumptions.discountRate)],
    ['Inflation', `${percent(assumptions.inflation)}; of energy ${percent(assumptions.energyInflation)}`],
    ['Price of electricity', `${sayNumber(price)} ${currency} per kWh${mean}`],
    ['Labour', `${sayNumber(assumptions.labourRate)} ${currency} an hour`],
    ['Work on a failure', `${sayNumber(assumptions.minutesPerFailure)} minutes`],
  ];
  const list = notes.length === 0 ? null : markup`<ul>${notes.map((note) => markup`<li>${note}</li>`)}</ul>`;
  return markup`<section><h2>Assumptions</h2>${facts('What the figures suppose', rows)}${list}</section>`;
}
