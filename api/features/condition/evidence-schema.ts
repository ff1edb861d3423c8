/** Documents one measure of a loop against its baseline and the model. */
import { z } from '@hono/zod-openapi';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';
import { causeField } from './cause-schema.ts';
import { countField, outletField, share, shareInterval } from './gauge-schema.ts';

const figures = (
  context: SchemaContext,
  quantity: Quantity,
  examples: readonly [number, number, number],
) => ({
  outlet: outletField(context),
  predicted: computed(context, quantity, {
    description: 'By the model, at the settings of the readings.',
    example: examples[0],
  }),
  baselineValue: computed(context, quantity, {
    description: 'Mean of the baseline, at the same settings; absent where it holds too few readings.',
    example: examples[1],
  }).optional(),
  measured: computed(context, quantity, {
    description: 'Mean of the window of `statistic`, else of the last 30 days.',
    example: examples[2],
  }),
  change: share(
    context,
    'measured/baselineValue - 1; of a pressure the difference as a fraction of the predicted head. Absent without a baseline value.',
    -0.11,
  ).optional(),
  standardError: share(
    context,
    'Standard error of the change, accuracy of the meter included.',
    0.015,
  ).optional(),
  serialCorrelation: share(context, 'Correlation of the error of one day with that of the next.', 0.1),
  trendPerYear: share(
    context,
    'By how much the measure changes in a year, since the baseline began; absent with fewer than six days of readings, or within a week.',
    -0.4,
  ).optional(),
  interval: shareInterval(context, { what: 'the trend', low: -0.5, high: -0.3 }).optional(),
  readingCount: countField(context, 'Readings in the window.', 30),
});

/** The measures of one quantity, with what `of` makes of it. */
const ofQuantity = <const Measures extends readonly [string, ...string[]], Shape extends z.ZodRawShape>(
  context: SchemaContext,
  measures: Measures,
  shape: Shape,
) =>
  z.strictObject({
    measure: described(context, z.enum(measures), {
      description: 'What is measured.',
      examples: [measures[0]],
    }),
    ...shape,
  });

const FLOWS = ['flow', 'outletFlow'] as const;
const PRESSURES = ['suctionPressure', 'dischargePressure'] as const;

export const evidenceSchema = perContext((context) =>
  named(
    context,
    'Evidence',
    z.union([
      ofQuantity(context, FLOWS, figures(context, 'flow', [8420, 8390, 7410])),
      ofQuantity(context, ['power'], figures(context, 'power', [121, 122, 112])),
      ofQuantity(context, ['head'], figures(context, 'head', [2.05, 2.04, 2.17])),
      ofQuantity(context, PRESSURES, figures(context, 'pressure', [3.6, 3.5, 1.1])),
    ]),
    { description: 'A measure against its baseline.' },
  ),
);

const expected = (context: SchemaContext, quantity: Quantity, example: number) => ({
  outlet: outletField(context),
  setting: computed(context, 'setting', { description: 'The setting to read it at.', example: 80 }),
  valveClosed: described(context, z.boolean(), {
    description: 'True where a valve at the pump is closed meanwhile, for a few seconds; absent otherwise.',
    examples: [true],
  }).optional(),
  expected: described(
    context,
    z.array(
      z.strictObject({
        cause: causeField(context),
        value: computed(context, quantity, { description: 'What it would show then.', example }),
      }),
    ),
    { description: 'Of the two causes that it separates.' },
  ),
});

export const nextReadingSchema = perContext((context) =>
  named(
    context,
    'NextReading',
    z.union([
      ofQuantity(context, FLOWS, expected(context, 'flow', 7410)),
      ofQuantity(context, ['power'], expected(context, 'power', 112)),
      ofQuantity(context, ['head'], expected(context, 'head', 2.17)),
      ofQuantity(context, PRESSURES, expected(context, 'pressure', 1.1)),
    ]),
    { description: 'The reading that would best separate the two likeliest causes.' },
  ),
);
