/** Documents a page of a list. */
import { z } from '@hono/zod-openapi';
import { unitsField } from '../units/answer-units.ts';
import { described, named } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import { nullable } from './nullable.ts';

export const listSchema = <Item extends z.ZodType>(context: SchemaContext, name: string, item: Item) =>
  named(
    context,
    name,
    z.strictObject({
      items: described(context, z.array(item), { description: 'In the order of their creation.' }),
      next: described(context, nullable(z.string()), {
        description: 'The `cursor` of the next page; null on the last.',
      }),
      units: unitsField(context),
    }),
    { description: 'A page of a list.' },
  );
