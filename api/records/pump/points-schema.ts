/** Documents the points by which a pump is entered. */

import { z } from '@hono/zod-openapi';
import { FULL_SETTING } from '../../fields/full-setting.ts';
import { named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const flow = (context: SchemaContext) =>
  entered(context, 'flow', {
    description: 'Flow through the pump.',
    minimum: 0,
    maximum: 10,
    example: 6000,
  });

const setting = {
  description: "Setting of the pump's controller.",
  minimum: 0,
  aboveMinimum: true,
  maximum: FULL_SETTING,
};

export const headPoint = perContext((context) =>
  named(
    context,
    'HeadPoint',
    z.strictObject({
      flow: flow(context),
      head: entered(context, 'head', {
        description:
          'Head of the pump; one in a unit of pressure is that of a column of sea water of 25 degC and 35 g/kg, 1023.34 kg/m3, unless the pump comes with a loop, whose water it then is.',
        minimum: 0,
        maximum: 1000,
        example: 4.5,
      }),
      setting: entered(context, 'setting', { ...setting, example: FULL_SETTING, default: FULL_SETTING }),
    }),
    { description: 'A point of the head curve at a setting.' },
  ),
);

export const powerPoint = perContext((context) =>
  named(
    context,
    'PowerPoint',
    z.strictObject({
      setting: entered(context, 'setting', { ...setting, example: 60 }),
      power: entered(context, 'power', {
        description: 'Electrical power, standby included.',
        minimum: 0,
        maximum: 1e6,
        example: 55,
      }),
      flow: flow(context).optional(),
    }),
    { description: 'The electrical power at a setting, and at a flow where that was noted.' },
  ),
);

export const speedPoint = perContext((context) =>
  named(
    context,
    'SpeedPoint',
    z.strictObject({
      setting: entered(context, 'setting', { ...setting, example: 30 }),
      speed: entered(context, 'speed', {
        description: 'The true speed there, in % of full speed.',
        minimum: 0,
        aboveMinimum: true,
        maximum: FULL_SETTING,
        example: 41,
      }),
    }),
    { description: 'The true speed at a setting.' },
  ),
);

export const npshPoint = perContext((context) =>
  named(
    context,
    'NpshPoint',
    z.strictObject({
      flow: flow(context),
      head: entered(context, 'head', {
        description: 'Net positive suction head that the pump requires.',
        minimum: 0,
        maximum: 100,
        example: 1.2,
      }),
    }),
    { description: 'The required NPSH at a flow.' },
  ),
);
