/** Documents the intake screen that a flow needs. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

export const screenSizeSchema = perContext((context) =>
  named(
    context,
    'ScreenSize',
    z.strictObject({
      shape: described(context, z.enum(['cylinder', 'flat', 'box']), {
        description: 'As it was asked for.',
        examples: ['cylinder'],
      }),
      length: computed(context, 'length', {
        description:
          'Least length of each screen; of a cylinder at most 10 diameters, of a box no less than its width. Cut it no shorter.',
        example: 0.427,
      }),
      count: described(context, z.int(), {
        description: 'Least number of equal screens that share the flow.',
        examples: [1],
      }),
      diameter: nullable(
        computed(context, 'diameter', {
          description:
            'Diameter of the one cylinder, ten diameters long, that would do instead; null where one of the entered diameter does, and for other shapes.',
          example: 112,
        }),
      ),
      openFraction: computedNumber(context, {
        description: 'Open area over whole area, unclogged.',
        example: 0.35,
      }),
      meanVelocity: computed(context, 'velocity', {
        description: 'Flow over the open area that clogging leaves.',
        example: 0.0921,
      }),
      peakVelocity: computed(context, 'velocity', {
        description:
          "Through the busiest openings: of a cylinder those at its root, mean x y coth y with y = sqrt(2) x 0.6 x (one screen's open area that clogging leaves)/(pi diameter^2/4); the mean for other shapes.",
        example: 0.1524,
      }),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['One cylinder of 60 mm, at least 0.427 m long, keeps 7500 L/h below 0.1524 m/s.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the screen.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The least screen that keeps to a velocity.' },
  ),
);
