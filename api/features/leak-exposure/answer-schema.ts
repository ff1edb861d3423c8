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
      flow: computed(context, 'flow', { description: 'Outflow at the start of the leak.', example: 3019.72 }),
      timeToHole: computed(context, 'time', {
        description: 'Time until the surface is down at the hole in the tank and no more can leave.',
        example: 3814.9,
      }),
      timeToLevel: nullable(
        computed(context, 'time', {
          description: 'Time until the surface is at the requested level; null if none was requested.',
          example: 1117.4,
        }),
      ),
      volume: computed(context, 'volume', {
        description: 'Volume lost until the surface is down at the hole.',
        example: 1600,
      }),
      floodDepth: nullable(
        computed(context, 'depth', {
          description: 'Depth of the water on the floor; null without the area of the floor.',
          example: 0.133333,
        }),
      ),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: [
          'The leak starts at 580 L/h. After 5.5 h, 1600 L has been lost, 133 mm deep on the floor.',
        ],
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
