/** Documents the terms of heat behind an answer. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const reportedHeat = (context: SchemaContext) =>
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
