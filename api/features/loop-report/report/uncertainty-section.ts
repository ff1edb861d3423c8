/** Lists the intervals of the figures of a loop's report. */

import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { table } from '../../../drawing/table.ts';
import type { Quantity } from '../../../units/table.ts';
import { say } from '../../../wording/numbers-in-words.ts';
import type { LoopReport, ReportedDuty } from './report-figures.ts';

const COLUMNS = [
  { name: '' },
  { name: 'At least', isFigure: true },
  { name: 'As computed', isFigure: true },
  { name: 'At most', isFigure: true },
] as const;

export function uncertaintySection(best: ReportedDuty, { system }: LoopReport): Markup {
  const { uncertainty } = best;
  const row = (
    name: string,
    quantity: Quantity,
    { low, high }: { readonly low: number; readonly high: number },
    value: number,
  ) => [name, say(low, quantity, system), say(value, quantity, system), say(high, quantity, system)];
  const rows = [
    row('Flow', 'flow', uncertainty.flow, best.flow),
    row('Power', 'power', uncertainty.power, best.power),
    row('Energy a year', 'energy', uncertainty.annualEnergy, best.annualEnergy),
  ];
  const cause =
    uncertainty.grade === null
      ? 'By the scatter of the entered points about their curve (one-sided 95 %) and the two laws of power'
      : `By ISO 9906 grade ${uncertainty.grade}, the scatter of the entered points (one-sided 95 %) and the two laws of power`;
  return markup`<section><h2>Uncertainty</h2>${table(cause, COLUMNS, rows)}</section>`;
}
