/** Documents the bill of materials of a loop. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const KINDS = ['pipe', 'fitting', 'valve', 'tee', 'nozzle', 'screen'] as const;

const material = (context: SchemaContext) =>
  z.strictObject({
    kind: described(context, z.enum(KINDS), { description: 'What it is.', examples: ['pipe'] }),
    name: described(context, z.string(), {
      description: 'What it is and of which size: the name that a price list uses. Sizes are in mm here.',
      examples: ['pipe, sch80 1-1/2'],
    }),
    count: described(context, z.int(), {
      description: 'Pieces; of a pipe the runs that it is used in.',
      examples: [1],
    }),
    length: nullable(computed(context, 'length', { description: 'Of a pipe, all of it.', example: 2.5 })),
    bought: nullable(z.int()).openapi({
      description: 'Pieces to buy; null of a pipe that is sold by any length.',
      examples: [1],
    }),
    cost: nullable(
      computedNumber(context, { description: 'Null where the list has no price.', example: 36.25 }),
    ),
  });

const extra = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.string(), {
      description: 'After the loop.',
      examples: ['Pipework of Kelp flume'],
    }),
    kind: described(context, z.enum(['pipework']), { description: 'Its kind.', examples: ['pipework'] }),
    cost: computedNumber(context, { description: 'The total.', example: 36.25 }),
    year: described(context, z.int(), { description: 'Paid at the start.', examples: [0] }),
  });

export const billSchema = perContext((context) =>
  named(
    context,
    'BillOfMaterials',
    z.strictObject({
      materials: described(context, z.array(material(context)), { description: 'By kind, then name.' }),
      total: nullable(
        computedNumber(context, {
          description: 'Of all that has a price; null where nothing has.',
          example: 36.25,
        }),
      ),
      currency: described(context, z.string(), { description: "The site's.", examples: ['EUR'] }),
      complete: described(context, z.boolean(), {
        description: 'Whether all that is on the bill has a price, and every element is named.',
        examples: [false],
      }),
      unpriced: described(context, z.array(z.string()), {
        description: 'Names of materials that the list has no price for.',
        examples: [['elbow-90, sch80 2']],
      }),
      unnamed: described(context, z.array(z.string()), {
        description:
          'Elements that state a loss but not what causes it, and splits without a stated tee, as JSON pointers into the loop.',
        examples: [['/discharge/branches/1/run/0']],
      }),
      extra: described(context, nullable(extra(context)), {
        description:
          'Null unless all that is on the bill has a price; else the total as one of the `extras` of an option of a comparison, to paste there.',
      }),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['6 materials, 36.25 EUR for what has a price; 5 have none.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), { description: 'What to know.' }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The materials of a loop, priced where a price is known.' },
  ),
);
