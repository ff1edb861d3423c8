/** Documents the intake of a loop with its screen. */
import { z } from '@hono/zod-openapi';
import type { Intake, IntakeScreen } from '../../../models/loop/loop.ts';
import { bore, extent, length } from '../../fields/lengths.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { openingsFields, withOpenFraction } from './screen-openings.ts';

const screenFields = (context: SchemaContext) => ({
  length: extent(context, 'length', { description: 'The length of the screen.', example: 0.5 }),
  ...openingsFields(context),
  count: wholeNumber(context, {
    description: 'How many equal screens share the flow.',
    minimum: 1,
    maximum: 1000,
    example: 1,
    default: 1,
  }),
});

const cylinder = perContext((context) =>
  named(
    context,
    'CylinderScreen',
    z.strictObject({
      shape: z.literal('cylinder'),
      diameter: bore(context, { description: 'The outside diameter of the screen.', example: 60 }),
      ...screenFields(context),
    }),
    { description: 'A cylinder drawn from one end.' },
  ),
);

const flat = perContext((context) =>
  named(
    context,
    'FlatScreen',
    z.strictObject({
      shape: z.literal('flat'),
      width: extent(context, 'length', { description: 'The width of the screen.', example: 0.3 }),
      ...screenFields(context),
    }),
    { description: 'A flat screen.' },
  ),
);

const box = perContext((context) =>
  named(
    context,
    'BoxScreen',
    z.strictObject({
      shape: z.literal('box'),
      width: extent(context, 'length', { description: 'The width of the box.', example: 0.3 }),
      height: extent(context, 'length', { description: 'The height of the box.', example: 0.2 }),
      ...screenFields(context),
    }),
    { description: 'A box screened on four sides and top, standing on a closed side.' },
  ),
);

const screen = perContext(
  (context): z.ZodType<IntakeScreen> =>
    named(
      context,
      'IntakeScreen',
      withOpenFraction(z.discriminatedUnion('shape', [cylinder(context), flat(context), box(context)])),
      { description: 'The screen that keeps animals out of the intake.' },
    ),
);

export const intake = perContext(
  (context): z.ZodType<Intake> =>
    named(
      context,
      'Intake',
      z.strictObject({
        lossCoefficient: numberField(context, {
          description: 'K of the entrance on the first suction pipe; 0.5 is sharp-edged.',
          minimum: 0,
          maximum: 1e6,
          example: 0.5,
          default: 0.5,
        }),
        depth: length(context, 'depth', {
          description: 'How far the intake lies below the surface.',
          example: 0.4,
        }).optional(),
        screen: screen(context).optional(),
        smallestAnimal: entered(context, 'slot', {
          description:
            'The width of the smallest animal in the tank, compared with the openings of the screen.',
          minimum: 0,
          aboveMinimum: true,
          maximum: 10,
          example: 6,
        }).optional(),
        reachable: described(context, z.boolean(), {
          description: 'Whether people can reach the intake; not known where it is left out.',
          examples: [false],
        }).optional(),
      }),
      { description: 'Where water enters a loop.' },
    ),
);
