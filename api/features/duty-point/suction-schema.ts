/** Documents what is before the pump at a duty, and what of the duty could not be judged. */
import { z } from '@hono/zod-openapi';
import { CHECKS } from '../../../models/duty/not-checked.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const npshField = (context: SchemaContext) =>
  described(
    context,
    z.strictObject({
      available: computed(context, 'head', {
        description: 'Head before the pump above that at which the water boils.',
        example: 7.3226,
      }),
      required: computed(context, 'head', {
        description: 'Head that the pump requires there; absent without NPSH points.',
        example: 3.006062,
      }).optional(),
      ratio: computedNumber(context, {
        description: 'available/required; absent without NPSH points.',
        example: 2.435945,
      }).optional(),
    }),
    { description: 'Net positive suction head at the duty.' },
  );

export const suctionShape = (context: SchemaContext) => ({
  npsh: npshField(context),
  suctionPressure: computed(context, 'pressure', {
    description:
      'What a gauge before the pump reads, above the pressure of the air. The suction of a system curve is not known: its losses count as 0.',
    example: -25.8684,
  }),
  notChecked: described(context, z.array(z.enum(CHECKS)), {
    description:
      'What could not be judged: `npsh` without points or with a suction that is not known, `motor` without ratedPower, `minimum-flow` without flowLimits.min, `surge` where a discharge pipe has no rating or none is known, `line-pressure` where no run states highestElevation.',
    examples: [['npsh', 'motor']],
  }),
});
