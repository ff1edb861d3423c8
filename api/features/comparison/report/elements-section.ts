/** Lists what each option costs by element, in a comparison's report. */
import { COST_ELEMENTS } from '../../../../models/money/option-costs.ts';
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { table } from '../../../drawing/table.ts';
import { userName } from '../../../drawing/user-name.ts';
import { sayNumber } from '../../../wording/numbers-in-words.ts';
import type { ComparisonAnswer } from './report-figures.ts';

const capital = (word: string): string => `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`;

/** Elements that no option has are left out. */
export function elementsSection({ options, currency }: ComparisonAnswer): Markup {
  const used = COST_ELEMENTS.filter((element) => options.some(({ elements }) => elements[element] !== 0));
  const columns = [
    { name: 'Option' },
    ...used.map((element) => ({ name: capital(element), isFigure: true })),
    { name: 'In all', isFigure: true },
  ];
  const rows = options.map(({ name, elements, presentValue }) => [
    userName(name),
    ...used.map((element) => sayNumber(elements[element])),
    sayNumber(presentValue),
  ]);
  return markup`<section><h2>By element</h2>${table(`Present values in ${currency}`, columns, rows)}</section>`;
}
