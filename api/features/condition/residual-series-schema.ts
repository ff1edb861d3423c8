/** Documents the residuals of a measure day by day, for a picture of them. */
import { z } from '@hono/zod-openapi';
import { MEASURES } from '../../../models/condition/residuals.ts';
import { nullable } from '../../fields/nullable.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const place = (context: SchemaContext) => ({
  time: described(context, z.iso.datetime(), {
    description: 'The instant, in UTC.',
    examples: ['2026-01-15T10:00:00.000Z'],
  }),
  residual: computedNumber(context, {
    description: 'As in the evidence: a share of what is predicted.',
    example: -0.08,
  }),
});

export const residualSeriesSchema = perContext((context) =>
  named(
    context,
    'ResidualSeries',
    z.strictObject({
      measure: described(context, z.enum(MEASURES), {
        description: 'What was measured.',
        examples: ['flow'],
      }),
      outlet: described(context, nullable(z.string()), {
        description: 'The outlet of an outletFlow; else null.',
        examples: [null],
      }),
      points: described(
        context,
        z.array(
          z.strictObject({
            ...place(context),
            readings: described(context, z.int(), { description: 'Readings behind it.', examples: [24] }),
          }),
        ),
        { description: 'Medians of days, or where there are over 400 of some days together, in order.' },
      ),
      line: nullable(
        z.strictObject({ from: z.strictObject(place(context)), to: z.strictObject(place(context)) }),
      ),
    }),
    { description: 'Daily residuals of a measure and the ends of their trend, null where there is none.' },
  ),
);
