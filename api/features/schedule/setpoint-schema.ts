/** Documents what a controller is to set. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { fallbackSchema, feasibleField, settingField } from './answer-schema.ts';
import { servedOutlets } from './outlet-schema.ts';

const time = (context: SchemaContext, description: string, example: string) =>
  described(context, z.iso.datetime({ offset: true }), { description, examples: [example] });

const stepShape = (context: SchemaContext) => ({
  setting: settingField(context, 'What to dial [% of full]; 0 is stopped.'),
  feasible: feasibleField(context),
  phase: described(context, nullable(z.string()), {
    description: 'Name of the phase; null without a schedule.',
    examples: ['night'],
  }),
  from: time(context, 'Since when it holds, by the clocks of the site.', '2026-01-15T22:00:00.000+00:00'),
  until: time(context, 'Until when it holds.', '2026-01-16T07:00:00.000+00:00'),
  power: computed(context, 'power', { description: 'Power at it.', example: 51.3 }),
  flow: computed(context, 'flow', { description: 'Total flow at it.', example: 6240 }),
});

export const setpointSchema = perContext((context) =>
  named(
    context,
    'Setpoint',
    z.strictObject({
      ...stepShape(context),
      outlets: servedOutlets(context),
      fallback: fallbackSchema(context),
      summary: described(context, z.string(), {
        description: 'The answer in one plain sentence.',
        examples: ['Set 58 % until 07:00 (night).'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about this setting.',
      }),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'What to set now, until when, and what to do if the service is away.' },
  ),
);

const stepSchema = perContext((context) =>
  named(context, 'SetpointStep', z.strictObject(stepShape(context)), {
    description: 'What to set in a part of the day.',
  }),
);

export const setpointsSchema = perContext((context) =>
  named(
    context,
    'Setpoints',
    z.strictObject({
      items: described(context, z.array(stepSchema(context)), { description: 'In order, without gaps.' }),
      fallback: fallbackSchema(context),
      dataBasis: dataBasisField(context),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'What to set in the next 24 hours.' },
  ),
);
