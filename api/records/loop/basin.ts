/** Documents what happens to the water of a return system when the pump stops. */
import { z } from '@hono/zod-openapi';
import type { Basin } from '../../../models/loop/loop.ts';
import { length } from '../../fields/lengths.ts';
import { named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const basin = perContext(
  (context): z.ZodType<Basin> =>
    named(
      context,
      'Basin',
      z.strictObject({
        area: entered(context, 'area', {
          description: 'The area of its surface.',
          minimum: 0,
          aboveMinimum: true,
          maximum: 1e6,
          example: 1.5,
        }),
        freeboard: length(context, 'length', {
          description: 'How far its water may still rise while the pump runs.',
          example: 0.2,
        }),
      }),
      { description: 'The basin that a return system draws from and drains back to.' },
    ),
);

/** The fields of a loop that a power cut brings into play. */
export const powerCutFields = (context: SchemaContext) => ({
  basin: basin(context).optional(),
  siphonBreakDepth: length(context, 'depth', {
    description:
      "How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there.",
    example: 0.05,
  }).optional(),
  overflowCapacity: entered(context, 'flow', {
    description: 'What the overflow of the tank carries.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 10,
    example: 15000,
  }).optional(),
});
