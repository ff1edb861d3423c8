/** How the water of a loop is kept at its temperature. */
import { z } from '@hono/zod-openapi';
import type { HeatTerms } from '../../../models/duty/heat.ts';
import { numberField } from '../../fields/number-field.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

export const heat = perContext(
  (context): z.ZodType<HeatTerms> =>
    named(
      context,
      'HeatTerms',
      z.strictObject({
        cop: numberField(context, {
          description: 'Coefficient of performance of the chiller or heater: heat moved over electricity.',
          minimum: 0.1,
          maximum: 100,
          example: 3,
        }),
        mode: described(context, z.enum(['cooling', 'heating']), {
          description: "Whether a chiller takes the pump's heat away, or a heater is spared it.",
          examples: ['cooling'],
        }),
        inRanking: described(context, z.boolean(), {
          description: 'Whether the ranking counts what that costs or spares; not where it is left out.',
          examples: [false],
        }).default(false),
      }),
      { description: 'Asks what the heat of a pump costs a chiller, or spares a heater.' },
    ),
);
