/** Documents how accurate the meters of a loop are. */
import { z } from '@hono/zod-openapi';
import { MEASURES, type Meter } from '../../../models/loop/meter.ts';
import { ACCURACY_ASSUMED } from '../../../models/readings/measure.ts';
import { numberField } from '../../fields/number-field.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const ACCURACY = { minimum: 0, maximum: 0.5 } as const;

const meter = perContext(
  (context): z.ZodType<Meter> =>
    named(
      context,
      'Meter',
      z.strictObject({
        measure: described(context, z.enum(MEASURES), {
          description: 'What it measures.',
          examples: ['flow'],
        }),
        accuracy: numberField(context, {
          description: `Accuracy as a fraction of the reading, one standard deviation; of a pressure, of the predicted head. By default ${ACCURACY_ASSUMED}.`,
          ...ACCURACY,
          example: 0.01,
        }),
      }),
      { description: 'The meters of a measure.' },
    ),
);

function checkMeasures(meters: readonly Meter[], issues: z.RefinementCtx): void {
  const seen = new Set<string>();
  for (const [place, { measure }] of meters.entries()) {
    if (seen.has(measure)) {
      issues.addIssue({
        code: 'custom',
        path: [place, 'measure'],
        message: `states ${measure} a second time`,
      });
    }
    seen.add(measure);
  }
}

export const meters = (context: SchemaContext) =>
  described(context, z.array(meter(context)).max(MEASURES.length).superRefine(checkMeasures), {
    description:
      'Accuracy of the meters, a measure once; a quarter of it counts as wander since the baseline.',
  });
