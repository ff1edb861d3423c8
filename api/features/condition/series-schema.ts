/** Documents a measure day by day, for a control chart. */
import { z } from '@hono/zod-openapi';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { countField, instantField, measureField, outletField, share } from './gauge-schema.ts';

const point = (context: SchemaContext) =>
  z.strictObject({
    time: instantField(context, 'Middle reading of the day.', '2026-05-03T10:00:00.000Z'),
    residual: share(
      context,
      'measured/predicted - 1, of a pressure the difference as a fraction of the predicted head: the median of the day.',
      -0.08,
    ),
    readingCount: countField(context, 'Readings of the day.', 24),
  });

const band = (context: SchemaContext) =>
  z.strictObject({
    residual: share(context, 'Mean of the baseline.', 0.01),
    low: share(context, 'A day lies above this in 97.5 % while nothing changes.', -0.03),
    high: share(context, 'A day lies below this in 97.5 % while nothing changes.', 0.05),
  });

export const seriesSchema = perContext((context) =>
  named(
    context,
    'ResidualSeries',
    z.strictObject({
      measure: measureField(context),
      outlet: outletField(context),
      points: described(context, z.array(point(context)), { description: 'Days with readings, in order.' }),
      baseline: described(context, band(context), {
        description: 'Absent where the baseline holds too few readings of it.',
      }).optional(),
    }),
    { description: 'A measure day by day, with its baseline.' },
  ),
);
