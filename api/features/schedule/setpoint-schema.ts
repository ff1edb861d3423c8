/** Documents what a controller is to set. */
import { z } from '@hono/zod-openapi';
import { READING_STATES } from '../../../models/schedule/reading-state.ts';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { dataBasisField } from '../../fields/data-basis.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { fallbackSchema } from './answer-schema.ts';
import { feasibleField, infeasibleShape } from './infeasible-fields.ts';
import { servedOutlets } from './outlet-schema.ts';

const time = (context: SchemaContext, description: string, example: string) =>
  described(context, z.iso.datetime({ offset: true }), { description, examples: [example] });

const stepShape = (context: SchemaContext) => ({
  setting: settingField(context, 'What to dial [% of full]; 0 is stopped.', 58),
  feasible: feasibleField(context),
  ...infeasibleShape(context),
  phase: described(context, nullable(z.string()), {
    description: 'Name of the phase; null without a schedule.',
    examples: ['night'],
  }),
  from: time(context, 'Since when it holds, by the clocks of the site.', '2026-01-15T22:00:00.000+00:00'),
  until: time(context, 'Until when it holds.', '2026-01-16T07:00:00.000+00:00'),
  power: computed(context, 'power', { description: 'Power at it.', example: 51.3 }),
  flow: computed(context, 'flow', { description: 'Total flow at it.', example: 6240 }),
});

const latestReading = perContext((context) =>
  named(
    context,
    'LatestReading',
    z.strictObject({
      time: described(context, z.iso.datetime(), {
        description: 'When it was measured.',
        examples: ['2026-01-15T12:03:00.000Z'],
      }),
      setting: settingField(context, 'The setting that was read [% of full].', 70),
      power: computed(context, 'power', { description: 'Power read.', example: 85.7 }).optional(),
      flow: computed(context, 'flow', { description: 'Total flow read.', example: 7530 }).optional(),
      state: described(context, z.enum(READING_STATES), {
        description:
          'The first that applies. `stopped`: power or flow of a stopped pump. `other-setting`: not the setting that was due. `differs`: power or flow more than 20 % from the predicted. `as-set`: none of these.',
        examples: ['as-set'],
      }),
    }),
    {
      description:
        'The last reading of the quarter of an hour before, and whether the pump does what it was set to.',
    },
  ),
);

export const setpointSchema = perContext((context) =>
  named(
    context,
    'Setpoint',
    z.strictObject({
      ...stepShape(context),
      outlets: servedOutlets(context),
      fallback: fallbackSchema(context),
      latestReading: latestReading(context).optional(),
      summary: described(context, z.string(), {
        description: 'The answer in a few plain sentences.',
        examples: ['Set 58 % until 2026-01-16 07:00 (phase "night").'],
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
