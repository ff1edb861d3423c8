/** The terms of heat that an answer was made under. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../schemas/nullable.ts';
import { computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const heatTold = (context: SchemaContext) =>
  described(
    context,
    nullable(
      z.strictObject({
        cop: computedNumber(context, { description: 'Heat moved over electricity.', example: 3 }),
        mode: described(context, z.enum(['cooling', 'heating']), {
          description: 'Taken away by a chiller, or spared by a heater.',
          examples: ['cooling'],
        }),
        inRanking: described(context, z.boolean(), {
          description: 'Whether the ranking counts it.',
          examples: [false],
        }),
      }),
    ),
    { description: 'How the water is kept at its temperature; null where `heat` was not asked for.' },
  );
