/** Lists what changes the answer of a comparison's report. */
import { PERCENT } from '../../../../curves/percent.ts';

import { SENSITIVITY_CHANGE } from '../../../../models/money/sensitivity.ts';
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { table } from '../../../drawing/table.ts';
import { sayNumber } from '../../../wording/numbers-in-words.ts';
import type { ComparisonAnswer } from './report-figures.ts';

const SHOWN_MOST = 6;

function breakEvenWords({
  breakEvenPrice,
  breakEvenValueAtRisk,
  currency,
}: ComparisonAnswer): readonly string[] {
  return [
    ...(breakEvenPrice === null
      ? []
      : [`Electricity at ${sayNumber(breakEvenPrice)} ${currency} per kWh would make both cost the same.`]),
    ...(breakEvenValueAtRisk === null
      ? []
      : [`So would a value at risk of ${sayNumber(breakEvenValueAtRisk)} ${currency}.`]),
  ];
}

/** Null where there is nothing to compare. */
export function sensitivitySection(comparison: ComparisonAnswer): Markup | null {
  const { sensitivity, currency } = comparison;
  if (sensitivity.length === 0) return null;
  const change = `${PERCENT * SENSITIVITY_CHANGE} %`;
  const columns = [
    { name: 'Input' },
    { name: `${change} lower`, isFigure: true },
    { name: `${change} higher`, isFigure: true },
    { name: 'Changes the answer' },
  ];
  const rows = sensitivity
    .slice(0, SHOWN_MOST)
    .map(({ input, low, high, flips }) => [
      input.replaceAll('-', ' '),
      sayNumber(low),
      sayNumber(high),
      flips ? 'yes' : 'no',
    ]);
  const lines = breakEvenWords(comparison).map((line) => markup`<p>${line}</p>`);
  return markup`<section><h2>What it hangs on</h2>${table(`Saving against the first option in ${currency}, with one input changed`, columns, rows)}${lines}</section>`;
}
