/** Documents what a leak lets out. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

export const leakSchema = perContext((context) =>
  named(
    context,
    'LeakExposure',
    z.strictObject({
      flow: computed(context, 'flow', { description: 'Outflow at the start.', example: 3019.72 }),
      timeToHole: computed(context, 'time', {
        description: 'Until the surface stands at the hole in the tank and no more can leave.',
        example: 3814.9,
      }),
      timeToLevel: nullable(
        computed(context, 'time', {
          description: 'Until the surface stands at the level asked for; null where none is.',
          example: 1117.4,
        }),
      ),
      volume: computed(context, 'volume', { description: 'What is lost down to the hole.', example: 1600 }),
      floodDepth: nullable(
        computed(context, 'depth', {
          description: 'How deep it stands on the floor; null without its area.',
          example: 0.133333,
        }),
      ),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['3020 L/h leave at first; in 63.58 min 1600 L are on the floor, 0.1333 m deep.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about leaks.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'What a leak lets out, how fast and how deep.' },
  ),
);
