/** Documents the cautions that answers to a write carry. */
import { z } from '@hono/zod-openapi';
import { cautionSchema } from '../fields/caution.ts';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

/** What was entered that looks like a slip; stored all the same. */
export const entryCautions = (context: SchemaContext) =>
  described(context, z.array(cautionSchema(context)), {
    description:
      'Entries that look like a slip of unit or of scale; they are stored all the same. In answers to a write alone.',
  });
