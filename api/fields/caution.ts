/** Documents a caution in answers. */
import { z } from '@hono/zod-openapi';
import { described, named } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';

export const cautionSchema = perContext((context) =>
  named(
    context,
    'Caution',
    z.strictObject({
      code: described(context, z.string(), {
        description: 'Stable code of the caution.',
        examples: ['screen-uneven'],
      }),
      severity: described(context, z.enum(['note', 'warning', 'danger']), {
        description: 'How grave it is.',
        examples: ['warning'],
      }),
      detail: described(context, z.string(), {
        description: 'What it says, and in brackets what it is about.',
        examples: ['Water runs faster than the velocity limit in a pipe. (/discharge/run/0)'],
      }),
      source: described(context, z.string(), {
        description: 'On whose authority.',
        examples: ['common practice'],
      }),
    }),
    { description: 'Something that the reader of the figures must know.' },
  ),
);
