/** Documents how an answer refers to a pump. */

import { z } from '@hono/zod-openapi';
import { answeredKey } from '../../fields/key-field.ts';
import { nullable } from '../../fields/nullable.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const pumpRefShape = (context: SchemaContext) => ({
  id: described(context, nullable(z.string()), {
    description: 'Id of the pump; null where it came with the request.',
    examples: ['0198c0de-0000-7000-8000-000000000002'],
  }),
  ...answeredKey(context),
  name: described(context, z.string(), { description: 'Its name.', examples: ['Canister 250'] }),
});

export const pumpRefSchema = perContext((context) =>
  named(context, 'PumpReference', z.strictObject(pumpRefShape(context)), { description: 'Which pump.' }),
);
