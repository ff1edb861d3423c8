/** What a derived answer was computed from. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../schemas/nullable.ts';
import { described, named } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';
import type { SchemaContext } from '../units/schema-context.ts';

const recordSchema = (context: SchemaContext, of: string) =>
  z.strictObject({
    id: described(context, nullable(z.string()), {
      description: `Id of the ${of}; null where it came with the request.`,
      examples: ['0198c0de-0000-7000-8000-000000000001'],
    }),
    version: described(context, nullable(z.int()), {
      description: 'Its version; null where it came with the request.',
      examples: [3],
    }),
  });

export const basisSchema = perContext((context) =>
  named(
    context,
    'Basis',
    z.strictObject({
      modelVersion: described(context, z.string(), {
        description: 'Version of the formulas; figures change only with it or with the records below.',
        examples: ['1'],
      }),
      loop: described(context, nullable(recordSchema(context, 'loop')), {
        description: 'The loop; null where none took part.',
        examples: [{ id: '0198c0de-0000-7000-8000-000000000001', version: 3 }],
      }),
      pumps: described(context, z.array(recordSchema(context, 'pump')), {
        description: 'The pumps, in the order of the candidates.',
        examples: [[{ id: '0198c0de-0000-7000-8000-000000000002', version: 1 }]],
      }),
    }),
    { description: 'The versions that the figures rest on.' },
  ),
);
