/** Documents one measure of a loop against what the model predicts. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';

const share = (context: SchemaContext, description: string, example: number) =>
  computedNumber(context, { description, example });

const figures = (context: SchemaContext, quantity: Quantity, examples: readonly [number, number]) => ({
  outlet: described(context, nullable(z.string()), {
    description: 'The outlet of an outletFlow; else null.',
    examples: [null],
  }),
  predicted: computed(context, quantity, {
    description: 'What the data give: the median over the present, the readings from `since` on.',
    example: examples[0],
  }),
  measured: computed(context, quantity, {
    description: 'What was measured: the median over the same.',
    example: examples[1],
  }),
  residual: share(
    context,
    'measured/predicted - 1, for a pressure (measured - predicted) as a share of the predicted head: the median over the same.',
    -0.12,
  ),
  since: described(context, z.iso.datetime(), {
    description:
      'Where the present begins: 30 days before the last reading, later after a cleaning or where the last readings stand apart from those before.',
    examples: ['2025-12-20T10:00:00.000Z'],
  }),
  standardError: share(context, 'Standard error of the residual, by the scatter of the readings.', 0.004),
  trendPerYear: nullable(
    share(
      context,
      'What the residual changes by in a year of 365.25 days: the Theil-Sen slope through daily medians, between cleanings where completions record some. Null with fewer than six days of readings, or within a week.',
      -0.11,
    ),
  ),
  interval: nullable(
    z.strictObject({
      low: share(context, 'Low end of the interval of 95 % of the trend, by Sen.', -0.118),
      high: share(context, 'High end.', -0.102),
    }),
  ),
  readings: described(context, z.int(), { description: 'Readings behind it.', examples: [360] }),
});

/** `Measures` of one quantity. */
const ofQuantity = <const Measures extends readonly [string, ...string[]]>(
  context: SchemaContext,
  measures: Measures,
  of: ReturnType<typeof figures>,
) =>
  z.strictObject({
    measure: described(context, z.enum(measures), {
      description: 'What was measured.',
      examples: [measures[0]],
    }),
    ...of,
  });

export const evidenceSchema = perContext((context) =>
  named(
    context,
    'Evidence',
    z.union([
      ofQuantity(context, ['flow', 'outletFlow'], figures(context, 'flow', [8420, 7410])),
      ofQuantity(context, ['power'], figures(context, 'power', [121, 112])),
      ofQuantity(context, ['head'], figures(context, 'head', [2.05, 2.17])),
      ofQuantity(
        context,
        ['suctionPressure', 'dischargePressure'],
        figures(context, 'pressure', [3.6, -1.2]),
      ),
    ]),
    { description: 'A measure against its prediction, and where it goes.' },
  ),
);
