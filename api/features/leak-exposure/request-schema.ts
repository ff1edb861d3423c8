/** Documents the request for the exposure to a leak. */
import { z } from '@hono/zod-openapi';
import type { LeakOpening } from '../../../models/hazards/leak.ts';
import { keyedUnion } from '../../fields/keyed-union.ts';
import { bore, extent, length } from '../../fields/lengths.ts';
import { numberField } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const DISCHARGE_COEFFICIENT = 0.61;

const hole = (context: SchemaContext) =>
  z.strictObject({
    diameter: bore(context, {
      description: 'The diameter of the hole, or the bore of the broken pipe.',
      example: 25,
    }),
  });

const seal = (context: SchemaContext) =>
  z.strictObject({
    gap: entered(context, 'gap', {
      description: 'How far the seal gapes, all round the fitting.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 1,
      example: 0.5,
    }),
    fittingDiameter: bore(context, { description: 'The diameter of the fitting at its seal.', example: 60 }),
  });

const opening = perContext(
  (context): z.ZodType<LeakOpening> =>
    named(
      context,
      'LeakOpening',
      keyedUnion<LeakOpening>(context, [
        { key: 'diameter', schema: hole(context) },
        { key: 'gap', schema: seal(context) },
      ]),
      { description: 'A round hole, or a slit all round a drilled fitting.' },
    ),
);

const leakTank = (context: SchemaContext) =>
  named(
    context,
    'LeakTank',
    z.strictObject({
      volume: entered(context, 'volume', {
        description: 'The volume of its water; no more than that is lost.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 1e6,
        example: 2400,
      }).optional(),
      area: entered(context, 'area', {
        description: 'The area of its surface.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 1e6,
        example: 4,
      }),
    }),
    { description: 'The tank that drains; its walls are taken as upright.' },
  );

export const leakRequest = perContext((context) =>
  named(
    context,
    'LeakExposureRequest',
    z.strictObject({
      opening: opening(context),
      depth: extent(context, 'depth', {
        description: 'The hole in the tank below its surface.',
        example: 0.4,
      }),
      drop: length(context, 'length', {
        description:
          'How far below that hole the pipe from it is broken; 0 where it is not stated: the hole itself leaks.',
        example: 0.8,
      }).optional(),
      level: length(context, 'depth', {
        description: 'Height of the surface above the hole that `timeToLevel` is asked for.',
        example: 0.2,
      }).optional(),
      tank: leakTank(context),
      floorArea: entered(context, 'area', {
        description: 'The area of the floor or tray that the water spreads over.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 1e6,
        example: 12,
      }).optional(),
      dischargeCoefficient: numberField(context, {
        description: 'Cd of the opening; 0.61 is sharp-edged.',
        minimum: 0.01,
        maximum: 1,
        example: DISCHARGE_COEFFICIENT,
        default: DISCHARGE_COEFFICIENT,
      }),
      ...acceptedFields(context),
    }),
    { description: 'An opening below the surface of a tank.' },
  ),
);
