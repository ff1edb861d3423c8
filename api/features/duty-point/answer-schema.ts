/** Documents the duty point of a pump at a setting on a loop. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { dutyShape } from './duty-schema.ts';
import { drainBackField } from './surroundings-schema.ts';

const intersectionSchema = (context: SchemaContext) =>
  z.strictObject({
    flow: computed(context, 'flow', { description: 'Total flow of the crossing.', example: 7533.14 }),
    head: computed(context, 'head', { description: 'Its head.', example: 1.5714 }),
    stable: described(context, z.boolean(), {
      description: 'Whether a disturbed flow returns to it.',
      examples: [true],
    }),
  });

export const dutyPointSchema = perContext((context) =>
  named(
    context,
    'DutyPoint',
    z.strictObject({
      ...dutyShape(context),
      intersections: described(context, z.array(intersectionSchema(context)), {
        description:
          'Every crossing of pump and system curve, by rising flow; the duty is the stable one of least flow.',
      }),
      drainBack: drainBackField(context),
      summary: described(context, z.string(), {
        description: 'The answer in one or two plain sentences.',
        examples: ['Canister 250 at setting 70 % moves 7533 L/h at 1.571 m and draws 85.7 W.'],
      }),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The duty of one pump at one setting on the loop.' },
  ),
);
