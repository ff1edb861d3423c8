/** Documents what an outlet gets, and what it requires. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const servedOutlet = perContext((context) =>
  named(
    context,
    'ServedOutlet',
    z.strictObject({
      name: described(context, z.string(), { description: 'Name of the outlet.', examples: ['far end'] }),
      flow: computed(context, 'flow', { description: 'What it gets; negative: backwards.', example: 1814.2 }),
      requiredFlow: nullable(
        computed(context, 'flow', {
          description: 'What it needs in this phase; null where nothing is required.',
          example: 1800,
        }),
      ),
      margin: nullable(
        computedNumber(context, {
          description: 'flow/requiredFlow - 1; null without a requirement above 0.',
          example: 0.0079,
        }),
      ),
      velocity: nullable(
        computed(context, 'velocity', {
          description: 'Mean velocity of the leaving stream; null where no nozzle or pipe is known.',
          example: 2.85,
        }),
      ),
      shortage: computed(context, 'flow', {
        description: 'In an infeasible phase: required flow less flow, 0 where it is met.',
        example: 0,
      }).optional(),
    }),
    { description: 'An outlet in a phase.' },
  ),
);

export const servedOutlets = (context: SchemaContext) =>
  described(context, z.array(servedOutlet(context)), { description: 'What each outlet gets.' });
