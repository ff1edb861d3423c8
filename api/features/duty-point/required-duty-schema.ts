/** Documents the least duty that meets every requirement of a loop. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computed } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const requiredDutySchema = (context: SchemaContext) =>
  z.strictObject({
    flow: computed(context, 'flow', {
      description: 'Least total flow that serves every outlet.',
      example: 7462.52,
    }),
    head: computed(context, 'head', { description: 'Head that it needs.', example: 1.54263 }),
    limitingOutlet: described(context, z.string(), {
      description: 'The outlet with the smallest margin.',
      examples: ['far end'],
    }),
  });

export const requiredDutyField = (context: SchemaContext) => nullable(requiredDutySchema(context));
