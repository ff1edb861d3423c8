/** Documents the head that a loop needs against its total flow. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { requiredDutyField } from '../duty-point/required-duty-schema.ts';

const pointSchema = (context: SchemaContext) =>
  z.strictObject({
    flow: computed(context, 'flow', { description: 'Total flow.', example: 7500 }),
    head: computed(context, 'head', {
      description: 'Head needed, suction losses included.',
      example: 1.55784,
    }),
    outlets: described(
      context,
      z.array(
        z.strictObject({
          name: described(context, z.string(), { description: 'Name of the outlet.', examples: ['far end'] }),
          flow: computed(context, 'flow', { description: 'What it gets.', example: 3015.1 }),
        }),
      ),
      { description: 'What each outlet gets of it.' },
    ),
  });

export const systemCurveSchema = perContext((context) =>
  named(
    context,
    'SystemCurveTable',
    z.strictObject({
      points: described(context, z.array(pointSchema(context)), { description: 'By rising flow.' }),
      requiredDuty: requiredDutyField(context),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The system curve of a loop, whatever the pump.' },
  ),
);
