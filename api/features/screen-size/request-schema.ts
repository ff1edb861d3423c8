/** Documents the request for the size of an intake screen. */
import { z } from '@hono/zod-openapi';
import { DEFAULT_LIMITS, THROUGH_SLOT_VELOCITY } from '../../../models/loop/limits.ts';
import { bore, extent } from '../../fields/lengths.ts';
import { numberField } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { openingsFields, withOpenFraction } from '../../records/loop/screen-openings.ts';
import { named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const commonFields = (context: SchemaContext) => ({
  flow: entered(context, 'flow', {
    description: 'What is drawn through the screen, all pumps together.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 10,
    example: 7500,
  }),
  ...openingsFields(context),
  cloggedFraction: numberField(context, {
    description: 'Share of the openings taken as clogged.',
    minimum: 0,
    maximum: 0.99,
    example: DEFAULT_LIMITS.cloggedFraction,
    default: DEFAULT_LIMITS.cloggedFraction,
  }),
  throughSlotVelocity: entered(context, 'velocity', {
    description:
      'Highest velocity through the openings of the part-clogged screen, on average and at its busiest.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 100,
    example: THROUGH_SLOT_VELOCITY,
    default: THROUGH_SLOT_VELOCITY,
  }),
  smallestAnimal: entered(context, 'slot', {
    description: 'The width of the smallest animal in the tank, compared with the openings.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 10,
    example: 6,
  }).optional(),
  ...acceptedFields(context),
});

const shapes = (context: SchemaContext) =>
  z.discriminatedUnion('shape', [
    z.strictObject({
      shape: z.literal('cylinder'),
      diameter: bore(context, { description: 'The outside diameter of the cylinder.', example: 60 }),
      ...commonFields(context),
    }),
    z.strictObject({
      shape: z.literal('flat'),
      width: extent(context, 'length', { description: 'The width of the flat screen.', example: 0.3 }),
      ...commonFields(context),
    }),
    z.strictObject({
      shape: z.literal('box'),
      width: extent(context, 'length', {
        description: 'The width of the box, which is the shorter of the two sides that it stands on.',
        example: 0.3,
      }),
      height: extent(context, 'length', { description: 'The height of the box.', example: 0.2 }),
      ...commonFields(context),
    }),
  ]);

export const screenSizeRequest = perContext((context) =>
  named(context, 'ScreenSizeRequest', withOpenFraction(shapes(context)), {
    description: 'A screen but for its length: a cylinder drawn from one end, a flat screen or a box.',
  }),
);
