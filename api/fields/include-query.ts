/** Reads which parts an answer shall have besides, as a list in a query. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

/** Names separated by commas; one that is unknown is refused. */
export const includeQuery = <const Names extends readonly [string, ...string[]]>(
  context: SchemaContext,
  names: Names,
) =>
  described(
    context,
    z
      .string()
      .transform((text) => text.split(','))
      .pipe(z.array(z.enum(names)).max(names.length)),
    {
      type: 'string',
      description: `Parts that the answer shall have besides, separated by commas: ${names.join(', ')}.`,
      examples: [names[0]],
    },
  );
