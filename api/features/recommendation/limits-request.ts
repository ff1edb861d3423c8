/** Documents the limits that a caller may set for a selection. */
import { z } from '@hono/zod-openapi';
import { DEFAULT_LIMITS, type Limits } from '../../../models/selection/options.ts';
import { nullable } from '../../fields/nullable.ts';
import { numberField } from '../../fields/number-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const { throughSlotVelocity, cloggedFraction, screenBasis, pipeVelocity, efficiency } = DEFAULT_LIMITS;

const slotVelocity = (context: SchemaContext) =>
  described(
    context,
    nullable(
      entered(context, 'velocity', {
        description: 'Highest velocity through the slots of the part-clogged screen.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 100,
        example: 0.1524,
      }),
    ),
    {
      description:
        'Highest velocity through the slots of the part-clogged screen; null: not judged. 0.1524 m/s without it.',
    },
  );

const yesOrNo = (context: SchemaContext, description: string) =>
  described(context, z.boolean(), { description, examples: [false] }).default(false);

const members = (context: SchemaContext) =>
  z.strictObject({
    throughSlotVelocity: slotVelocity(context).default(throughSlotVelocity),
    cloggedFraction: numberField(context, {
      description: 'Share of the slots taken as clogged.',
      minimum: 0,
      maximum: 0.99,
      example: cloggedFraction,
      default: cloggedFraction,
    }),
    screenBasis: described(context, z.enum(['mean', 'peak']), {
      description: 'Which velocity of a screen rejects: its mean, or that of its busiest slots.',
      examples: [screenBasis],
    }).default(screenBasis),
    pipeVelocity: entered(context, 'velocity', {
      description: 'Velocity in a pipe above which a caution is given; it never rejects.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 100,
      example: pipeVelocity,
      default: pipeVelocity,
    }),
    efficiency: numberField(context, {
      description: 'Wire-to-water efficiency above which the entered points cannot be right.',
      minimum: 0,
      aboveMinimum: true,
      maximum: 1,
      example: efficiency,
      default: efficiency,
    }),
    npsh: yesOrNo(
      context,
      'Whether a pump whose NPSH is not met is rejected, where it is cautioned otherwise. Of a pump without npshPoints it judges no more than that the water does not boil before the pump.',
    ),
    extrapolation: yesOrNo(context, 'Whether a duty beyond 1.1 times the largest entered flow is accepted.'),
  });

export const limits = perContext(
  (context): z.ZodType<Limits> =>
    named(context, 'Limits', members(context), {
      description: 'What a setting must keep to besides the flows of the outlets.',
    }),
);
