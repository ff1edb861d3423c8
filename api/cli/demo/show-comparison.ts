/** Shows a comparison as lines for a terminal, its options column by column. */
import { z } from '@hono/zod-openapi';
import { COST_ELEMENTS } from '../../../models/money/option-costs.ts';

export const comparisonView = z.object({
  name: z.string(),
  currency: z.string(),
  options: z.array(
    z.object({
      name: z.string(),
      presentValue: z.number(),
      elements: z.record(z.string(), z.number()),
    }),
  ),
  assumptions: z.object({ years: z.int() }),
  summary: z.string(),
});

const LABEL_WIDTH = 14;
const GAP = 3;

/** Elements that cost nothing in any option are left out. */
export function comparisonLines({
  name,
  currency,
  options,
  assumptions: { years },
  summary,
}: z.output<typeof comparisonView>): readonly string[] {
  const row = (label: string, cells: readonly string[]) =>
    `    ${label.padEnd(LABEL_WIDTH)}${cells
      .map((cell, place) => cell.padStart((options[place]?.name.length ?? 0) + GAP))
      .join('')}`;
  const money = (value: number) => value.toFixed(0);
  const shown = COST_ELEMENTS.filter((element) => options.some(({ elements }) => elements[element] !== 0));
  return [
    `${name}: present value over ${years} years in ${currency}`,
    row(
      '',
      options.map((option) => option.name),
    ),
    ...shown.map((element) =>
      row(
        element,
        options.map(({ elements }) => money(elements[element] ?? 0)),
      ),
    ),
    row(
      'in all',
      options.map(({ presentValue }) => money(presentValue)),
    ),
    `  ${summary}`,
  ];
}
