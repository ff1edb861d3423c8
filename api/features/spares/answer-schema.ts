/** Documents how many spares must be on the shelf. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const rate = (context: SchemaContext) =>
  z.strictObject({
    value: computedNumber(context, { description: 'Failures over years watched.', example: 0.0666667 }),
    low: computedNumber(context, {
      description: 'Lower end of the exact 95 % interval of so many failures.',
      example: 0.00807364,
    }),
    high: computedNumber(context, { description: 'Its upper end.', example: 0.240823 }),
  });

const shelf = (context: SchemaContext) => ({
  spares: described(context, z.int(), {
    description: 'The fewest spares that last through one lead time with the stated confidence.',
    examples: [1],
  }),
  probability: computedNumber(context, {
    description: 'How probable it is that they last: that no more devices fail than there are spares.',
    example: 0.998,
  }),
  meanDemand: computedNumber(context, {
    description: 'Failures to be expected during one lead time.',
    example: 0.0613279,
  }),
});

export const sparesSchema = perContext((context) =>
  named(
    context,
    'Spares',
    z.strictObject({
      ...shelf(context),
      atHighRate: described(context, z.strictObject(shelf(context)), {
        description: 'The same if the devices fail as often as the counts still allow.',
      }),
      failuresPerDeviceYear: described(context, rate(context), {
        description: 'How often one device fails a year, from the counts.',
      }),
      positions: described(context, z.int(), {
        description: 'Devices that share the spares.',
        examples: [12],
      }),
      leadTimeDays: described(context, z.number(), { description: 'As asked.', examples: [28] }),
      confidence: described(context, z.number(), { description: 'As asked.', examples: [0.95] }),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['Keep 1 spare for 12 devices: it lasts through 28 days with a probability of 99.8 %.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about spares.',
      }),
      basis: basisSchema(context),
    }),
    { description: 'The shelf of a model of device.' },
  ),
);
